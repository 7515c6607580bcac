SELECT id, record FROM move_entry WHERE shift_id = ?1 ORDER BY id
