SELECT record FROM saved_task WHERE id = ?1
