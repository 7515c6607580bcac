# The pages of the plan that is followed.

screen-plan-open = See your plan
screen-plan-step = Your level
screen-plan-practice = Practice
screen-plan-log = Practice so far
screen-plan-log-none = Nothing is noted yet.
screen-plan-whole = All of the plan
screen-plan-how = How strong was the worst pain while you did it?
screen-plan-how-hint = 0 is none, 10 is the worst you can think of.
screen-plan-did = I did it, no number
screen-plan-left = Not today
screen-plan-kept = Noted.
screen-plan-stepped = Your level has changed.
screen-plan-stayed = You stay at your level.
screen-plan-flare = I have a flare-up today
screen-plan-flare-on = You told of a flare-up today
screen-plan-flare-what = Your level is about half now. For today your back counts as in a flare-up.
screen-plan-flare-told = Noted.
screen-plan-flare-steps = What to do in a flare-up
