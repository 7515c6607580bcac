# The figure of a way: what it asks of each part of the body. Words for the drawing, never for a limit.

figure-asks-back-little = Low back: little
figure-asks-back-some = Low back: some
figure-asks-back-much = Low back: much
figure-asks-knee-left-little = Left knee: little
figure-asks-knee-left-some = Left knee: some
figure-asks-knee-left-much = Left knee: much
figure-asks-knee-right-little = Right knee: little
figure-asks-knee-right-some = Right knee: some
figure-asks-knee-right-much = Right knee: much
figure-asks-hip-left-little = Left hip: little
figure-asks-hip-left-some = Left hip: some
figure-asks-hip-left-much = Left hip: much
figure-asks-hip-right-little = Right hip: little
figure-asks-hip-right-some = Right hip: some
figure-asks-hip-right-much = Right hip: much

figure-note = Sums for a healthy body of your height made this drawing. It compares ways. It cannot see you.
figure-note-no-height = Your height or weight is not known. A small and a large healthy body were worked out. The one with more load on the back is drawn. It compares ways. It cannot see you.
