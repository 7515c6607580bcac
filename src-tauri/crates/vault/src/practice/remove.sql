DELETE FROM practice WHERE id = ?1
