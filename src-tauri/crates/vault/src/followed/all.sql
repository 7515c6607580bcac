SELECT record FROM followed ORDER BY id
