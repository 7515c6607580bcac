INSERT INTO lift_log (seq, event, lift_id, row_digest, mac) VALUES (?1, ?2, ?3, ?4, ?5)
