INSERT INTO lift_log_head (only_row, seq, mac) VALUES (1, ?1, ?2)
ON CONFLICT (only_row) DO UPDATE SET seq = excluded.seq, mac = excluded.mac
