DELETE FROM move_entry WHERE id = ?1
