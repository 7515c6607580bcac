DELETE FROM current WHERE kind = ?1
