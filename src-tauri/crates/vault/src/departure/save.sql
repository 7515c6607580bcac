UPDATE departure SET record = ?2 WHERE id = ?1
