SELECT id, record FROM care_person ORDER BY id
