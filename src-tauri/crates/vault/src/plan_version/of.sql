SELECT record FROM plan_version WHERE plan_id = ?1 ORDER BY version
