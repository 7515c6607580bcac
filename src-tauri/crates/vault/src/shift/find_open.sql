SELECT id, record FROM shift WHERE is_open = 1
