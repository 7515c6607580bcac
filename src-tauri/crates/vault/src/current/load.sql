SELECT record FROM current WHERE kind = ?1
