SELECT seq, event, lift_id, row_digest, mac FROM lift_log ORDER BY seq
