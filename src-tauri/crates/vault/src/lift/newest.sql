SELECT id, record
FROM lift
WHERE (:done IS NULL OR done = :done)
  AND (:way IS NULL OR way = :way)
  AND (:since_ms IS NULL OR at_ms >= :since_ms)
  AND (:before IS NULL OR id < :before)
ORDER BY id DESC
LIMIT :limit
