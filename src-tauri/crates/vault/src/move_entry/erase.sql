DELETE FROM move_entry WHERE shift_id = ?1 AND is_proof = ?2
