SELECT record FROM sign WHERE is_open = 1 AND sign = ?1
