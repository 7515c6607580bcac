SELECT id, record FROM patient_note WHERE patient_id = ?1 ORDER BY id DESC
