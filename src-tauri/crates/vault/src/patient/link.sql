INSERT INTO patient_plan (plan_id, patient_id) VALUES (?1, ?2)
ON CONFLICT (plan_id) DO UPDATE SET patient_id = excluded.patient_id
