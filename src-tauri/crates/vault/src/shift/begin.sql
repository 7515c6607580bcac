INSERT INTO shift (is_open, record) VALUES (1, ?1)
