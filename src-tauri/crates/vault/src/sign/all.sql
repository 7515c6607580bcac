SELECT record FROM sign ORDER BY id
