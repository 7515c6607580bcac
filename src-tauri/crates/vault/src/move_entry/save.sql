UPDATE move_entry SET record = ?2 WHERE id = ?1
