DELETE FROM patient WHERE id = ?1
