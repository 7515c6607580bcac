UPDATE move_entry SET is_proof = ?2, record = ?3 WHERE id = ?1
