UPDATE sign SET is_open = 0, record = ?2 WHERE is_open = 1 AND sign = ?1
