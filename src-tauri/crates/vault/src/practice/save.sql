UPDATE practice SET record = ?2 WHERE id = ?1
