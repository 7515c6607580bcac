INSERT INTO check_in (lift_id, at_ms, record)
SELECT id, ?2, ?3 FROM lift WHERE id = ?1
