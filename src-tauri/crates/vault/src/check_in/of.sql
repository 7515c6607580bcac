SELECT record FROM check_in WHERE lift_id = ?1 ORDER BY id
