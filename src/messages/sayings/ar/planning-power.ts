import type { Sayings } from "../../said.ts";

export const PLANNING_POWER: Sayings = {
  "below 10 V": "أقل من \u206810 V\u2069",
  "empty: go on": "فارغ: تابع",
  "10 V or more": "\u206810 V\u2069 أو أكثر",
  "still charged: discharge it through a resistor, then measure again":
    "ما زال مشحونا: فرغه عبر مقاومة ثم قس من جديد",
  "The resistor may have emptied {0} as well: read again at each one's own pins.":
    "ربما فرغت المقاومة {0} أيضا: اقرأ من جديد عند طرفي كل منها نفسها.",
  "It has done its work there; {0} still holds {1} and is next.":
    "أدت عملها هناك؛ وما زال {0} يحمل {1} وهو التالي.",
  "The resistor needs about {0} to bring {1} below 10 V. Leave it on and read again at the pins of each.":
    "تحتاج المقاومة نحو {0} لإنزال {1} تحت \u206810 V\u2069. اتركها موصولة واقرأ من جديد عند طرفي كل منها.",
  "The resistor needs about {0} to bring {1} below 10 V. Leave it on and read again at the pins of {2}.":
    "تحتاج المقاومة نحو {0} لإنزال {1} تحت \u206810 V\u2069. اتركها موصولة واقرأ من جديد عند طرفي {2}.",
  "If it does not fall, something still feeds it: is the plug out, does a motor or fan turn, do the clips bite?":
    "إن لم ينخفض فشيء ما زال يغذيه: هل نزع القابس، وهل يدور محرك أو مروحة، وهل المشابك ممسكة؟",
  "{0} reads over the meter's range ({1}).": "قراءة {0} فوق مدى المقياس ({1}).",
  "{0} holds {1} ({2}).": "يحمل {0} جهد {1} ({2}).",
  "Then measure again.": "ثم قس من جديد.",
  "Clip {0}, {1}, across its own pins: about {2} to fall below 10 V.":
    "ثبت {0}، {1}، على طرفيه نفسيهما: نحو {2} ليهبط تحت \u206810 V\u2069.",
  "Clip {0}, {1}, across its own pins: about {2} to fall below 10 V, {3} at first.":
    "ثبت {0}، {1}، على طرفيه نفسيهما: نحو {2} ليهبط تحت \u206810 V\u2069، و {3} في البداية.",
  "Clip {0}, {1} or more, wire-wound, across its own pins: about {2} to fall below 10 V.":
    "ثبت {0}، {1} أو أكثر، سلكية، على طرفيه نفسيهما: نحو {2} ليهبط تحت \u206810 V\u2069.",
  "Clip {0}, {1} or more, wire-wound, across its own pins: about {2} to fall below 10 V, {3} at first.":
    "ثبت {0}، {1} أو أكثر، سلكية، على طرفيه نفسيهما: نحو {2} ليهبط تحت \u206810 V\u2069، و {3} في البداية.",
  "By itself it may come back to {0} over hours: read it again after any pause.":
    "قد يعود من نفسه إلى {0} خلال ساعات: اقرأه من جديد بعد كل توقف.",
  "Without one two such lamps in series do it in a flash; a dark lamp is no proof.":
    "إن لم توجد فمصباحان كهذا على التوالي يفعلان ذلك في ومضة؛ والمصباح المطفأ ليس دليلا.",
  "Without one the {0} lamp across it does it in a flash; a dark lamp is no proof.":
    "إن لم توجد فالمصباح {0} على طرفيه يفعل ذلك في ومضة؛ والمصباح المطفأ ليس دليلا.",
  "under 0.1 J": "أقل من \u20680.1 J\u2069",
  "a flash, then dark": "ومضة ثم ينطفئ",
  "a flash, then dim": "ومضة ثم يخفت",
  "slow pulsing: the lamp is too small for this board": "نبض بطيء: المصباح أصغر من أن يكفي هذه اللوحة",
  bright: "ساطع",
  "stays bright": "يبقى ساطعا",
  "a hard short: off, back to the cold checks": "قصر صريح: أطفئ وعد إلى الفحوص على البارد",
  "dark at once, no bus": "مطفأ فورا، ولا جهد على الناقل",
  "the feed is open": "التغذية مفتوحة",
  lamp: "المصباح",
  "nothing warm to speak of after 2 min": "لا شيء دافئ يذكر بعد \u20682 min\u2069",
  "over the room after 2 min: {0}": "فوق حرارة الغرفة بعد \u20682 min\u2069: {0}",
  heat: "الحرارة",
  "smoke, a crackle, a smell": "دخان أو فرقعة أو رائحة",
  "lamp bright for more than {0} (a PTC is in the way)": "المصباح ساطع أكثر من {0} (يوجد PTC في الطريق)",
  "lamp bright for more than {0}": "المصباح ساطع أكثر من {0}",
  "supply at its limit for more than {0}": "المصدر عند حده أكثر من {0}",
  "a rail over by {0} or more": "خط يزيد {0} أو أكثر",
  "bus above {0}, all that its capacitors bear": "الناقل فوق {0}، وهو كل ما تتحمله مكثفاته",
  "a part over {0} at 20 s, over {1} at 2 min (from outside, never by finger)":
    "قطعة فوق {0} عند \u206820 s\u2069، وفوق {1} عند \u20682 min\u2069 (من الخارج، لا بالإصبع أبدا)",
  "small parts: what is hot now is shorted or overdriven":
    "القطع الصغيرة: ما هو ساخن الآن فيه قصر أو محمل فوق طاقته",
  "the warmest parts against their band": "أدفأ القطع مقارنة بمداها",
  "one thermal cycle, where it was worth the wait": "دورة حرارية واحدة حيث استحق الأمر الانتظار",
  "bench supply into a rail": "مصدر المختبر إلى خط",
  "it pulsed, which may be the lamp itself, and no larger one is at hand":
    "نبض، وقد يكون السبب المصباح نفسه، ولا يوجد أكبر منه في المتناول",
  "it showed nothing that was written down: work on the board first":
    "لم يظهر شيئا دون: اعمل على اللوحة أولا",
  "it showed {0}: work on the board first": "أظهر {0}: اعمل على اللوحة أولا",
  "wants an isolated supply of 100 to 150 V DC with a current limit":
    "يحتاج مصدرا معزولا من \u2068100\u2069 إلى \u2068150 V\u2069 مستمرا بحد للتيار",
  "wants a bench supply with a current limit": "يحتاج مصدر مختبر بحد للتيار",
  "nothing on this board that it could feed": "لا شيء على هذه اللوحة يمكن أن يغذيه",
  "not needed: the board has borne more": "غير لازم: تحملت اللوحة أكثر منه",
  "spares less than its minutes cost": "يوفر أقل مما تكلفه دقائقه",
  "wants a series lamp: 100 W, filament or halogen": "يحتاج مصباح توال: \u2068100 W\u2069، بفتيل أو هالوجين",
  "after the mains without its motor; then its plug goes back on": "بعد الشبكة دون محركها؛ ثم يعاد قابسه",
  "{0}: until it reads well, or is overruled": "{0}: إلى أن يقرأ سليما أو يتجاوز عنه",
  "after the rung below": "بعد الدرجة التي تحته",
  "after the lamp has gone dark or dim, and the bus has been read at its volts":
    "بعد أن ينطفئ المصباح أو يخفت ويقرأ الناقل عند جهده",
  "the bus": "الناقل",
  "the {0} rail": "الخط {0}",
  "{0}, which its relay has to bypass": "{0} الذي على مرحله أن يجسره",
  "the supply of {0}": "تغذية {0}",
  "the coil of {0}": "ملف {0}",
  "Nothing can be read there: switch off and pull the plug.": "لا يمكن قراءة شيء هناك: أطفئ وانزع القابس.",
  "Take the warmth of {0} now with the camera or the spot thermometer, a hand's breadth away: nothing touches a live board. What cooks shows before it fails.":
    "خذ حرارة {0} الآن بالكاميرا أو مقياس الحرارة النقطي من مسافة عرض كف: لا شيء يلمس لوحة تحت الجهد. ما يغلي يظهر قبل أن يتلف.",
  "Take the warmth of {0} {1} after switch-on with the camera or the spot thermometer, a hand's breadth away: nothing touches a live board. What cooks shows before it fails.":
    "خذ حرارة {0} بعد {1} من التشغيل بالكاميرا أو مقياس الحرارة النقطي من مسافة عرض كف: لا شيء يلمس لوحة تحت الجهد. ما يغلي يظهر قبل أن يتلف.",
  "The meter hangs on {0}: read it now, with the hands off the board, then switch off.":
    "المقياس مثبت على {0}: اقرأه الآن ويداك بعيدتان عن اللوحة، ثم أطفئ.",
  "The meter hangs on {0}: read it {1} after switch-on, with the hands off the board.":
    "المقياس مثبت على {0}: اقرأه بعد {1} من التشغيل ويداك بعيدتان عن اللوحة.",
  "It ran at idle, and that proves little: {0} with a dummy load of about {1} (three equal lamps in a star) show a boost that never starts, an inrush part left in the way, a supply that gives in.":
    "عملت دون حمل، وهذا لا يثبت كثيرا: {0} بحمل بديل نحو {1} (ثلاثة مصابيح متساوية على شكل نجمة) تظهر رافعا لا يبدأ أبدا، أو قطعة تيار بدء بقيت في الطريق، أو مصدر تغذية ينهار.",
  "It ran at idle, and that proves little: {0} with its own load, held fast, show a boost that never starts, an inrush part left in the way, a supply that gives in.":
    "عملت دون حمل، وهذا لا يثبت كثيرا: {0} بحملها نفسه، مثبتا بإحكام، تظهر رافعا لا يبدأ أبدا، أو قطعة تيار بدء بقيت في الطريق، أو مصدر تغذية ينهار.",
  "Nobody reaches inside: a meter that is clipped on stays where it is.":
    "لا أحد يمد يده إلى الداخل: المقياس المثبت يبقى مكانه.",
  "Clip the meter on first: {0}.": "ثبت المقياس أولا: {0}.",
  "A motor that was unplugged goes back on only once every store is proven empty.":
    "لا يعاد محرك فصل إلا بعد إثبات خلو كل مخزن للشحنة.",
  "Heatsink on, cover or barrier in place, then hands off.":
    "المشتت مركب، والغطاء أو الحاجز في مكانه، ثم أبعد يديك.",
  "Once it has run for {0}, or stopped before: switch off, pull the plug, and write down what it did until then.":
    "بعد أن تعمل {0}، أو تتوقف قبل ذلك: أطفئ، وانزع القابس، ودون ما فعلته حتى ذلك الحين.",
  "What is doubted of it is worth the wait: let it get warm through, in sight, for {0}, or until it stops: switch off, pull the plug, and write down what it did until then.":
    "ما يشك فيه منها يستحق الانتظار: دعها تسخن كلها تحت نظرك {0}، أو حتى تتوقف: أطفئ، وانزع القابس، ودون ما فعلته حتى ذلك الحين.",
  "The supply's own display shows what it gives: look twice at which lead is plus.":
    "شاشة المصدر نفسه تبين ما يعطيه: انظر مرتين أي سلك هو الموجب.",
  "Nothing is touched on a live board. Write down what was seen, then switch off and pull the plug.":
    "لا يلمس شيء على لوحة تحت الجهد. دون ما شوهد، ثم أطفئ وانزع القابس.",
  "Every store of charge is empty.": "كل مخزن للشحنة فارغ.",
  "The proof was overruled.": "جرى تجاوز الإثبات.",
  "The resistor comes off: it would show in every cold reading across it, and it must be off before power.":
    "تنزع المقاومة: فهي تظهر في كل قراءة على البارد على طرفيها، ويجب أن تكون منزوعة قبل التشغيل.",
  "Nothing says yet that this board is dead: volts across every store of charge, at its own pins, before anything else is touched.":
    "لا شيء يثبت بعد أن هذه اللوحة خالية من الجهد: قس الفولت على كل مخزن للشحنة، عند طرفيه نفسيهما، قبل لمس أي شيء آخر.",
  "Since power was last on these have not been proven empty: below 10 V at each one's own pins opens the cold checks.":
    "منذ آخر تشغيل لم يثبت خلو هذه: أقل من \u206810 V\u2069 عند طرفي كل منها نفسها يفتح الفحوص على البارد.",
  "What turned has charged the bus through the diodes of its switches: below 10 V at each one's own pins opens the cold checks again.":
    "ما دار شحن الناقل عبر ثنائيات مفاتيحه: أقل من \u206810 V\u2069 عند طرفي كل منها نفسها يفتح الفحوص على البارد من جديد.",
  "The board is off and showed volts: something charges it. Is the plug out, does a motor or fan turn? Then below 10 V at each store's own pins.":
    "اللوحة مطفأة وأظهرت جهدا: شيء ما يشحنها. هل نزع القابس، وهل يدور محرك أو مروحة؟ ثم أقل من \u206810 V\u2069 عند طرفي كل مخزن نفسه.",
  "A capacitor that is put on a board brings its own charge, and shares it: {0} below 10 V at its own pins opens the cold checks again.":
    "المكثف الذي يركب على لوحة يجلب شحنته معه ويوزعها: {0} أقل من \u206810 V\u2069 عند طرفيه نفسيهما يفتح الفحوص على البارد من جديد.",
  "{0} reads well, and its plug comes off all the same: the first power is without a motor. It goes back on once the board has borne the mains.":
    "{0} يقرأ سليما، ومع ذلك ينزع قابسه: التشغيل الأول دون محرك. ويعاد بعد أن تتحمل اللوحة الشبكة.",
  "Before {0} is driven: its plug off, its windings and its insulation to earth read by themselves. A bad one kills the board again.":
    "قبل تشغيل {0}: قابسه منزوع، ولفائفه وعزله إلى الأرض مقروءة وحدها. المحرك التالف يتلف اللوحة من جديد.",
  "{0} goes back on its plug before power.": "يعاد {0} إلى قابسه قبل التشغيل.",
  "{0} stays unplugged: the first power is without a motor.": "يبقى {0} مفصولا: التشغيل الأول دون محرك.",
  "{0} stays unplugged: {1}.": "يبقى {0} مفصولا: {1}.",
  "{0} is connected unread, as overruled.": "{0} موصول دون قراءة، كما تقرر.",
  "{0} reads well and is plugged in.": "{0} يقرأ سليما وهو موصول.",
  "The windings of {0}, at its own plug, have to read alike; one that differs would take the new parts with it.":
    "يجب أن تتساوى قراءات لفائف {0} عند قابسه نفسه؛ والمختلفة تتلف القطع الجديدة معها.",
  "Insulation of {0} to its earth, its plug off.": "عزل {0} إلى أرضه وقابسه منزوع.",
  "Insulation of {0} from a winding to its frame, its plug off, in megohms: an insulation tester on the motor alone, never on the board; else the highest ohms range.":
    "عزل {0} من لفيفة إلى هيكله، وقابسه منزوع، بالميغا أوم: مقياس عزل على المحرك وحده، لا على اللوحة أبدا؛ وإلا فأعلى مدى للأوم.",
  "Not read, it stays unplugged.": "إن لم يقرأ يبقى مفصولا.",
  "The rail at its own volts from the bench supply says what cold checks cannot, and no mains is near.":
    "الخط على جهده من مصدر المختبر يقول ما لا تستطيعه الفحوص على البارد، والشبكة بعيدة.",
  "Some volts across the bus with a small limit show a short that the mains would feed.":
    "بضعة فولتات على الناقل بحد صغير تظهر قصرا كانت الشبكة لتغذيه.",
  "The small supply starts from an isolated bus before any mains is there.":
    "يبدأ مصدر التغذية المساعد من ناقل معزول قبل أي شبكة.",
  "No cold check left is worth its minutes; power says more, and the lamp holds the mains back.":
    "لم يبق فحص على البارد يستحق دقائقه؛ والتشغيل يقول أكثر، والمصباح يكبح الشبكة.",
  "No cold check left is worth its minutes; power says more.":
    "لم يبق فحص على البارد يستحق دقائقه؛ والتشغيل يقول أكثر.",
  "Clip the meters on first.": "ثبت المقاييس أولا.",
  "Then hands off.": "ثم أبعد يديك.",
  "Nothing read behind the lamp shows that the bus stands: gone dark proves nothing, a short behind a hot limiter goes dark too.":
    "لا قراءة خلف المصباح تبين أن الناقل على جهده: انطفاؤه لا يثبت شيئا، فالقصر خلف محدد ساخن ينطفئ معه أيضا.",
  "Pulsing may only be the lamp: a larger one carries the board.":
    "قد يكون النبض من المصباح فقط: الأكبر منه يحمل اللوحة.",
  "The board bears power and shows no more by itself: once more, with the meter at another place.":
    "اللوحة تتحمل الجهد ولا تظهر أكثر من نفسها: مرة أخرى والمقياس في موضع آخر.",
  "The lamp pulsed and did nothing else. That may be the lamp itself, and no larger one is at hand: on the mains at the risk told below.":
    "نبض المصباح ولم يفعل غير ذلك. قد يكون السبب المصباح نفسه، ولا يوجد أكبر منه: إلى الشبكة بالخطر المذكور أدناه.",
  "The lamp showed nothing hard, and it passes too little to prove the board.":
    "لم يظهر المصباح قصرا صريحا، وما يمرره أقل من أن يثبت سلامة اللوحة.",
  "It bore the mains without its motor: now with it.": "تحملت الشبكة دون محركها: والآن معه.",
  "Hardly anything is believed left that power could break: what a lamp would spare is worth less than its minutes.":
    "لا يكاد يظن أنه بقي ما قد يتلفه التشغيل: ما يوفره المصباح أقل قيمة من دقائقه.",
  "Set volts and limit with the leads in the air, switch off, clip on plus to plus, then switch on.":
    "اضبط الفولت والحد والأسلاك في الهواء، أطفئ، ثبت الموجب على الموجب، ثم شغل.",
  "On the mains only through the right fuse.": "على الشبكة عبر المصهر الصحيح فقط.",
  mains: "الشبكة",
  "lamp, {0}": "مصباح، {0}",
  "{0} into the bus": "{0} إلى الناقل",
  "{0} into {1}": "{0} إلى {1}",
  diode: "وضع الثنائي",
  farads: "سعة",
  "look at {0}": "النظر إلى {0}",
  "Nobody reaches inside: the meter, if one is clipped on, stays where it is.":
    "لا أحد يمد يده إلى الداخل: المقياس إن كان مثبتا يبقى مكانه.",
  "red on {0}, black on {1}, AC volts ({2})": "الأحمر على {0}، والأسود على {1}، جهد متردد ({2})",
  "red on {0}, black on {1}, DC volts ({2})": "الأحمر على {0}، والأسود على {1}، جهد مستمر ({2})",
  "{0}; second meter {1}": "{0}؛ والمقياس الثاني: {1}",
  "Clip the meter on first: {0}. A lamp gone dark proves nothing until this shows that the bus stands.":
    "ثبت المقياس أولا: {0}. المصباح المنطفئ لا يثبت شيئا حتى يبين هذا أن الناقل على جهده.",
  "Clip the meter on first: {0}. What it shows tells most.":
    "ثبت المقياس أولا: {0}. ما يظهره هو الأكثر دلالة.",
  "some parts die at switch-on with nothing else wrong": "بعض القطع تتلف عند التشغيل دون عطل آخر",
  "{0} may be left ({1}), the likeliest cause": "ربما بقي {0} ({1})، وهو السبب الأرجح",
  "bench supply into the drive rail": "مصدر المختبر إلى خط القيادة",
  "the rail, the drivers and the control side of the module, with no mains near":
    "الخط ودوائر القيادة وجانب التحكم في الوحدة، والشبكة بعيدة",
  "20 to 100 mA and steady": "من \u206820\u2069 إلى \u2068100 mA\u2069 وثابت",
  "over 200 mA or rising, the limit reached, or any part hot":
    "أكثر من \u2068200 mA\u2069 أو يرتفع، أو بلغ الحد، أو قطعة ساخنة",
  "bench supply into a logic rail": "مصدر المختبر إلى خط المنطق",
  "the regulator and the controller behind it, with no mains near":
    "المنظم والمتحكم الذي خلفه، والشبكة بعيدة",
  "10 to 80 mA, and a light or the crystal alive":
    "من \u206810\u2069 إلى \u206880 mA\u2069، وضوء أو بلورة حية",
  "the limit reached, or the controller warm": "بلغ الحد، أو المتحكم دافئ",
  "low volts across the bus": "فولتات قليلة على الناقل",
  "no short across the bus at some volts, and no switch that conducts by itself":
    "لا قصر على الناقل عند بضعة فولتات، ولا مفتاح يوصل من نفسه",
  "the current falls to a few milliamps once the bus is charged":
    "يهبط التيار إلى بضعة ملي أمبير بعد شحن الناقل",
  "the current stays at the limit; clipped on the wrong way round, the body diodes conduct":
    "يبقى التيار عند الحد؛ وإن ثبت معكوسا وصلت الثنائيات الداخلية",
  "100 to 150 V isolated across the bus": "من \u2068100\u2069 إلى \u2068150 V\u2069 معزولة على الناقل",
  "the small supply starts and makes its rails": "يبدأ مصدر التغذية المساعد ويعطي خطوطه",
  "the rails come up and stay": "ترتفع الخطوط وتثبت",
  "hiccup, heat, or the limit reached": "تقطع متكرر أو سخونة أو بلوغ الحد",
  "mains through a series lamp": "الشبكة عبر مصباح توال",
  "inrush, bridge, bus, the relay's click, and the small supply at full volts":
    "تيار البدء والجسر والناقل ونقرة المرحل ومصدر التغذية المساعد على كامل الجهد",
  "the lamp flashes, then goes dark, the bus stands at its volts and the rails are right":
    "يومض المصباح ثم ينطفئ، والناقل على جهده والخطوط صحيحة",
  "bright and staying so: a hard short. Dark with no bus proves nothing: the feed is open, or a short hides behind a hot PTC":
    "ساطع ويبقى كذلك: قصر صريح. والانطفاء دون ناقل لا يثبت شيئا: التغذية مفتوحة، أو قصر يختبئ خلف PTC ساخن",
  "mains without the lamp, no motor": "الشبكة دون المصباح ودون محرك",
  "the drive at full energy: gate signals, no cross conduction, three phases equal":
    "القيادة بكامل الطاقة: إشارات البوابات، ولا توصيل متقاطع، والأطوار الثلاثة متساوية",
  "it runs with nothing hot; where three equal lamps in star are at hand in the motor's place, they glow alike":
    "تعمل ولا شيء ساخن؛ وإن توفرت ثلاثة مصابيح متساوية على شكل نجمة مكان المحرك أضاءت بالتساوي",
  "the fuse blows, something smokes, or a phase differs": "يحترق المصهر أو يدخن شيء أو يختلف طور",
  "mains with its motor and load": "الشبكة مع محركها وحملها",
  "everything, once it is warm through": "كل شيء بعد أن تسخن كلها",
  "20 to 60 minutes at load without a trip": "من 20 إلى 60 دقيقة تحت الحمل دون فصل",
  "a trip, heat, or noise: off at once": "فصل أو سخونة أو ضجيج: أطفئ فورا",
  "it starts through the lamp: on to the mains": "تبدأ عبر المصباح: إلى الشبكة",
  "after a flash: no hard short, on to the mains; dark at once with no bus volts: the feed is open":
    "بعد ومضة: لا قصر صريح، إلى الشبكة؛ مطفأ فورا دون جهد على الناقل: التغذية مفتوحة",
  "a load or a leak, no hard short": "حمل أو تسرب، لا قصر صريح",
  "the small supply ticks: a rail is loaded, or the lamp is too small":
    "مصدر التغذية المساعد يتقطع: خط محمل، أو المصباح صغير جدا",
  "if it stays: a hard short, switch off and go back to the cold checks":
    "إن بقي كذلك: قصر صريح، أطفئ وعد إلى الفحوص على البارد",
  "nothing seen: read the bus at the clips": "لم ير شيء: اقرأ الناقل عند المشابك",
  "whole as far as it shows: load it": "سليمة بقدر ما يظهر: حملها",
  "no sign of life: back to the cold checks": "لا علامة حياة: عد إلى الفحوص على البارد",
  "it holds for as long as it was run": "تصمد طوال المدة التي شغلت فيها",
  "it stopped by itself: weak once it is warm or loaded": "توقفت من نفسها: ضعيفة حين تسخن أو تحمل",
  "it trips once it is loaded: weak, or a leak that cooks": "تفصل حين تحمل: ضعف، أو تسرب يغلي",
  "a short is left: back to the cold checks, no new fuse before it is found":
    "بقي قصر: عد إلى الفحوص على البارد، ولا مصهر جديد قبل العثور عليه",
  "a short, or a leak to earth: back to the cold checks": "قصر، أو تسرب إلى الأرض: عد إلى الفحوص على البارد",
  "switch off at once and look for what burnt": "أطفئ فورا وابحث عما احترق",
  "the supply is at its limit: switch off, find the load": "المصدر عند حده: أطفئ وابحث عن الحمل",
  lit: "مضيئة",
  "stays dark": "تبقى مطفأة",
  clicks: "يُسمع طقّه",
  "no click": "لا طقّة",
  turns: "تدور",
  "stands still": "ساكنة",
  "signs of life": "علامات الحياة",
  "all signs of life": "كل علامات الحياة",
};
