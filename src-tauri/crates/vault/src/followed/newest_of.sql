SELECT record FROM followed WHERE plan = ?1 ORDER BY id DESC LIMIT 1
