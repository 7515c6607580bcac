SELECT record FROM plan WHERE id = ?1
