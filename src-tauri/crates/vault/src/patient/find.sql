SELECT record FROM patient WHERE id = ?1
