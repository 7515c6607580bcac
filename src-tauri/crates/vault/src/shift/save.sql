UPDATE shift SET is_open = ?2, record = ?3 WHERE id = ?1
