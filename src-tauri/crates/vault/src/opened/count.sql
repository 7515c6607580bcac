SELECT count(*) FROM opened WHERE digest = ?1
