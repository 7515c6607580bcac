DELETE FROM saved_task WHERE id = ?1
