SELECT id, record
FROM lift
WHERE ?1 IS NULL OR at_ms >= ?1
ORDER BY id
