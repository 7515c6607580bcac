SELECT id, record FROM followed WHERE is_active = 1
