UPDATE followed SET is_active = 0, record = ?2 WHERE id = ?1
