# The page "What left this phone": fixed words.

screen-gone-title = What left this phone
screen-hand-kept = The record
screen-gone-note = What, when and to whom
screen-gone-lead = The newest first. What was in it is not kept here.
screen-gone-none = Nothing is on this list.
screen-gone-more = Show older ones
screen-gone-stays = This list stays here. It is never handed over.
screen-gone-clear = Clear this list
screen-gone-clear-what = The list is erased for good. What left stays where it is now, and nobody is told.
screen-gone-clear-yes = Erase the list
screen-gone-cleared = The list is empty now.
