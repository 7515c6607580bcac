SELECT lift_id, record
FROM check_in
WHERE ?1 IS NULL OR lift_id IN (SELECT id FROM lift WHERE at_ms >= ?1)
ORDER BY id
