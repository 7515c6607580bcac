SELECT record FROM practice WHERE id = ?1
