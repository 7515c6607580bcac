SELECT id FROM plan WHERE id NOT IN (SELECT plan_id FROM patient_plan) ORDER BY id
