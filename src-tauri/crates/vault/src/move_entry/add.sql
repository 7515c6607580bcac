INSERT INTO move_entry (shift_id, is_proof, record) VALUES (?1, ?2, ?3)
