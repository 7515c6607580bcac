SELECT id, record FROM shift WHERE is_open = 0 ORDER BY id DESC LIMIT 1
