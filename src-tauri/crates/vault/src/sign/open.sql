SELECT record FROM sign WHERE is_open = 1 ORDER BY id
