SELECT seq, mac FROM lift_log_head WHERE only_row = 1
