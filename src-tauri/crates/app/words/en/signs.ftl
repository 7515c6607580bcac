# Warning signs: what to watch for, whom to call. Readable while the app is locked.

signs-title = Warning signs
signs-intro = New in the last 2 weeks, or getting worse? Then do not lift. Get help first.

## What to do, by group

signs-emergency-title = Call for emergency help now
signs-emergency-do = Call your emergency number now. Do not drive yourself. Do not lift. Stay with somebody.
signs-same-day-title = Get medical advice today
signs-same-day-do = Call your doctor today. If it is closed, call the out-of-hours service. Do not lift until then.
signs-surgeon-title = Ask your surgeon first
signs-surgeon-do = Your surgeon's written limit comes first. If you have none, call and ask. Do not lift until then.
signs-none = None of these

## Whom to call

signs-whom-title = Whom to call
signs-whom-emergency = Your local emergency number. Write it down where you can see it.
signs-whom-same-day = Your doctor or clinic. If closed: the out-of-hours service.
signs-whom-nurse = A nurse on the phone, if you have such a line.
signs-whom-near = A neighbour or friend, so that you are not alone.

## Stuck

signs-stuck-title = Stuck in the middle of a lift?
signs-stuck-intro = Stay calm. Go one step at a time.
signs-stuck-do-1 = Let the load down, or let it drop away from your feet.
signs-stuck-do-2 = Lean on something firm. Breathe slowly.
signs-stuck-do-3 = Go down to hands and knees, or lie on your side.
signs-stuck-do-4 = Rest for some minutes. Then move a little at a time.
signs-stuck-do-5 = Legs weak or numb, or trouble with pee or poo? Call your emergency number now.

signs-floor-title = You cannot get up?
signs-floor-intro = Take your time. Check yourself first.
signs-floor-do-1 = Do not rush. Check: bad pain, bleeding, an odd shape, numb legs? Then stay there and call for help.
signs-floor-do-2 = Not hurt? Roll on your side. Come up to hands and knees.
signs-floor-do-3 = Crawl to a firm chair. Put your hands on the seat.
signs-floor-do-4 = Put your stronger leg in front. Push up, turn and sit down.
signs-floor-do-5 = It does not work? Keep warm, make noise and call for help.

## The question for each sign, by sign id, and the same in a few words

sign-saddle-numb = Numb or tingling between your legs, where a bike saddle would touch?
sign-short-saddle-numb = numb between the legs
sign-bladder-bowel = Trouble starting or stopping pee, leaking pee or poo, or not feeling when you need to go?
sign-short-bladder-bowel = new trouble with pee or poo
sign-both-legs-weak = Both legs weak, numb or hard to control, or pain down both legs?
sign-short-both-legs-weak = both legs weak, numb or in pain
sign-one-leg-weaker = One leg or foot clearly getting weaker? The foot drags, or the knee gives way?
sign-short-one-leg-weaker = one leg getting weaker
sign-major-trauma = Did this start after a bad fall, a crash or a blow?
sign-short-major-trauma = it began with a bad fall, crash or blow
sign-minor-trauma-fragile = Sudden strong pain after a small fall or lift? And weak bones, steroids, or over 70?
sign-short-minor-trauma-fragile = sudden strong pain, and bones that may be weak
sign-fever-unwell = Fever, shivers, or feeling very ill with the pain?
sign-short-fever-unwell = fever, or very ill
sign-cancer-history = Ever had cancer, and is this a new kind of pain?
sign-short-cancer-history = cancer in the past and a new kind of pain
sign-weight-loss = Losing weight without trying?
sign-short-weight-loss = losing weight without trying
sign-night-pain = Pain that never eases, whatever you do, even at night?
sign-short-night-pain = pain that never eases
sign-hot-joint = One joint hot, red or very swollen? Call for emergency help if you are very ill or the joint was replaced.
sign-short-hot-joint = one joint hot, red or very swollen
sign-locked-knee = Is a knee stuck? You cannot straighten or bend it?
sign-short-locked-knee = a knee is stuck
sign-no-weight-bear = You cannot take 4 steps on one leg? After a fall, call for emergency help.
sign-short-no-weight-bear = you cannot take 4 steps
sign-calf-swollen = One calf swollen, sore and warm?
sign-short-calf-swollen = one calf swollen, sore, warm
sign-chest-breath = Chest pain, short of breath, or sweating and sick?
sign-short-chest-breath = chest pain or short of breath
sign-dizzy-faint = Dizzy, faint, or about to pass out now? If it does not pass, call for emergency help.
sign-short-dizzy-faint = dizzy or faint
sign-stroke-signs = Face droops, an arm is weak, speech is odd, or sudden confusion?
sign-short-stroke-signs = face, arm or speech not as usual
sign-hernia-bad = A lump in groin or belly that is very sore, or you are being sick with it?
sign-short-hernia-bad = a very sore lump in groin or belly
sign-post-op-recent = Surgery on back, hip, knee or belly in the last 3 months?
sign-short-post-op-recent = surgery in the last 3 months
