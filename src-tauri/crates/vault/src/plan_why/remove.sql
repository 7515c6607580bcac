DELETE FROM plan_why WHERE plan_id = ?1 AND version = ?2
