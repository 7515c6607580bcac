INSERT INTO sign (sign, is_open, record) VALUES (?1, ?2, ?3)
ON CONFLICT (sign) WHERE is_open = 1 DO NOTHING
