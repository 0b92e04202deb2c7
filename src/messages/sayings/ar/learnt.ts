import type { Sayings } from "../../said.ts";

export const LEARNT: Sayings = {
  "{0} expected": "المتوقع {0}",
  "{0} found": "وجد {0}",
  "{0} found on {1} parts": "وجد {0} في {1} قطعة",
  short: "قصر",
  drift: "انحراف",
  "Faults found, against those that {0} in the same jobs; within these ends nine times in ten.":
    "الأعطال التي وجدت، مقابل ما {0} في الأعمال نفسها؛ ضمن هذين الحدين تسع مرات من عشر.",
  "Sorts of parts": "أصناف القطع",
  "the tables expect": "تتوقعه الجداول",
  "After one cause": "بعد سبب واحد",
  "their sort leads to expect": "يتوقع من صنفها",
  "In one family of boards": "في عائلة واحدة من اللوحات",
  "sort and cause lead to expect": "يتوقع من الصنف والسبب",
  "Parts of one board": "قطع لوحة واحدة",
  "their sort leads to expect in that family": "يتوقع من صنفها في تلك العائلة",
  "How parts fail": "كيف تتعطل القطع",
  "Shares of the modes, before and now.": "حصص الأنماط، قبل والآن.",
  "How parts fail in one family": "كيف تتعطل القطع في عائلة واحدة",
  "Shares of the modes, everywhere and there.": "حصص الأنماط، في كل مكان وهناك.",
  "What one fault brings with it": "ما يجره عطل معه",
  "Chance that the second follows the first.": "احتمال أن يتبع الثاني الأول.",
  "Minutes here": "الدقائق هنا",
  "Times the minutes of the job format; the next job is planned with them.":
    "أضعاف دقائق صيغة العمل؛ وبها يخطط للعمل القادم.",
  "On good boards beside those of the jobs; the next job on such a board counts with it.":
    "على لوحات سليمة بجانب لوحات الأعمال؛ والعمل القادم على لوحة كهذه يحسب بها.",
  "Prices paid": "الأسعار المدفوعة",
  "New parts, in the job's currency.": "قطع جديدة، بعملة العمل.",
  "{0} timed, {1} pauses left out": "{0} قيس زمنها، واستبعدت {1} استراحة",
  "{0}: {1} red {2}, black {3}": "{0}: {1} أحمر {2}، أسود {3}",
  "{0} bought": "اشتري {0}",
  "Parts nobody has seen:": "قطع لم يرها أحد:",
  "Nets that end at one pin:": "عقد تنتهي عند طرف واحد:",
  "No net ends at one pin.": "لا عقدة تنتهي عند طرف واحد.",
  "Rails without a source:": "خطوط بلا مصدر:",
  "Every rail has a source.": "لكل خط مصدر.",
  "Values that nobody sells:": "قيم لا يبيعها أحد:",
  "Every value is one that is sold.": "كل القيم مما يباع.",
  "{0}: {1}; the nearest is {2}": "{0}: {1}؛ والأقرب {2}",
  "Parts whose price can decide whether a repair pays, and has none (taken instead, of a new board):":
    "قطع قد يحسم سعرها جدوى الإصلاح ولا سعر لها (المأخوذ بدلا منه، من ثمن لوحة جديدة):",
  "Every part whose price can decide has one.": "كل قطعة قد يحسم سعرها لها سعر.",
  "Parts that no cold check tells apart as long as nothing is lifted:":
    "قطع لا يميز بينها أي قياس بارد ما لم يرفع شيء:",
  "Cold checks tell every shorted or open part that they show from every other.":
    "القياسات الباردة تميز كل قطعة مقصورة أو مفتوحة تظهرها عن غيرها.",
  "{0} faults (shorts and opens) show in no cold check; they need a lift, a look, or power.":
    "{0} من الأعطال (قصر وفتح) لا تظهر في أي قياس بارد؛ تحتاج إلى رفع أو نظر أو تغذية.",
  "no single lifted pin parts them": "رفع طرف واحد لا يفصل بينها",
  "lift {0}: {1}": "رفع {0}: {1}",
  "decoupling: {0}": "إزالة الاقتران: {0}",
  "clamp: {0}": "محدد الجهد: {0}",
  "pull-down: {0}": "سحب إلى الأسفل: {0}",
  "through: {0}": "عبر: {0}",
  "gate of {0}: {1}": "بوابة {0}: {1}",
  "rail {0}: {1} to {2}, {3}": "الخط {0}: {1} إلى {2}، {3}",
  "from {0}": "من {0}",
  "rectifier: {0}": "المقوم: {0}",
  "bulk: {0}": "التخزين: {0}",
  "feeds: {0}": "يغذي: {0}",
  "bus: none found": "الناقل: لم يعثر عليه",
  "bus: {0} to {1} (by its inverter legs)": "الناقل: {0} إلى {1} (من أذرع العاكس)",
  "bus: {0} to {1} (by its largest capacitor)": "الناقل: {0} إلى {1} (من أكبر مكثف)",
  "off-line switcher: {0}": "مبدل الشبكة: {0}",
  "off-line switcher: {0} into {1}": "مبدل الشبكة: {0} إلى {1}",
  "mains side: {0}": "جانب الشبكة: {0}",
  "line fuses: {0}": "مصاهر الخط: {0}",
  "inrush: {0}": "تيار البدء: {0}",
  "bridges: {0}": "الجسور: {0}",
  "bus capacitors: {0}": "مكثفات الناقل: {0}",
  "boost: switch {0}, diode {1}, reactor {2}": "الرفع: المفتاح {0}، الثنائي {1}، الملف {2}",
  "resonant: switch {0}, coil {1}, capacitor: {2}": "الرنين: المفتاح {0}، الملف {1}، المكثف: {2}",
  "motor switch {0}: {1}, phase {2}": "مفتاح المحرك {0}: {1}، الطور {2}",
  "shunts: {0}": "مقاومات القياس: {0}",
  "controller {0}: fed by {1}": "المتحكم {0}: يتغذى من {1}",
  "title: {0}": "العنوان: {0}",
  "found: nothing that it came in with": "وجد: لا شيء مما جاءت به",
  "found: {0}": "وجد: {0}",
  "broke when power came on (entry {0}): {1}": "تعطل عند التغذية (القيد {0}): {1}",
  "entries kept: {0} of {1}; notes, names, reasons, ids and what was undone are left out, times begin on 1 January 2000":
    "القيود المحفوظة: {0} من {1}؛ حذفت الملاحظات والأسماء والأسباب والمعرفات وما تم التراجع عنه، والأوقات تبدأ في 1 يناير 2000",
  "terms kept: none": "الشروط المحفوظة: لا شيء",
  "terms kept: {0}": "الشروط المحفوظة: {0}",
  "proposed way: {0} steps": "الطريق المقترح: {0} خطوة",
  "the job is still open: close it first": "العمل ما زال مفتوحا: أغلقه أولا",
  "this job found no fault: nothing was replaced and nothing is likelier faulty than not":
    "لم يجد هذا العمل عطلا: لم يستبدل شيء وليس شيء أقرب إلى العطل منه إلى السلامة",
  "the proposed way did not end within {0} steps": "لم ينته الطريق المقترح خلال {0} خطوة",
  "the practice bench has no answer to {0} without two places": "لا جواب لطاولة التمرين عن {0} بلا موضعين",
  "the practice bench has no answer to {0}": "لا جواب لطاولة التمرين عن {0}",
  "{0} is a cold mode; unpower the board first": "{0} وضع بارد؛ افصل تغذية اللوحة أولا",
  "no reading: {0}": "لا قراءة: {0}",
  "under power nobody can tell from the board file the {0} of {1}":
    "تحت التغذية لا يمكن معرفة {0} لـ {1} من ملف اللوحة",
  "nothing to learn from: {0}": "لا شيء يتعلم منه: {0}",
  "a shorted switch shorts its partner at the next gate pulse":
    "المفتاح المقصور يقصر شريكه عند نبضة البوابة التالية",
  "mostly one leg of a module goes short; it may take another in the same case":
    "غالبا تقصر ذراع واحدة من الوحدة؛ وقد تأخذ معها أخرى في الغلاف نفسه",
  "a short behind the rectifier opens the line fuse unless a limiter stood in its path":
    "القصر خلف المقوم يفتح مصهر الخط ما لم يكن في مساره محدد",
  "a varistor that shorts opens the fuse before it": "المقاوم المتغير إذا قصر فتح المصهر الذي قبله",
  "what shorted the varistor also reached the bridge and the small supply":
    "ما قصر المقاوم المتغير وصل أيضا إلى الجسر ومصدر التغذية المساعد",
  "fault current takes a bridge junction with it": "تيار العطل يأخذ معه وصلة من الجسر",
  "a steady short overheats the inrush limiter": "القصر الدائم يفرط في تسخين محدد تيار البدء",
  "the board ran through its inrush limiter": "عملت اللوحة عبر محدد تيار البدء",
  "the current of a shorted leg cracks the shunt under it": "تيار الذراع المقصورة يشقق مقاومة القياس تحتها",
  "a shorted motor shorts a leg": "المحرك المقصور يقصر ذراعا",
  "ripple of a dry bus capacitor stresses the switches": "تموج مكثف الناقل الجاف يجهد المفاتيح",
  "a shorted capacitor of a series pair leaves all the voltage to its partner":
    "المكثف المقصور من زوج على التوالي يترك الجهد كله لشريكه",
  "a shorted brake switch leaves its resistor across the bus":
    "مفتاح الفرملة المقصور يترك مقاومته على الناقل",
  "bus voltage breaks through to the gate: resistor open, clamp shorted":
    "جهد الناقل يخترق إلى البوابة: المقاومة مفتوحة ومحدد الجهد مقصور",
  "a shorted switch has lost its gate too": "المفتاح المقصور فقد بوابته أيضا",
  "through the gate into the driver": "عبر البوابة إلى القائد",
  "a shorted switch inside a module takes the driver beside it":
    "المفتاح المقصور داخل الوحدة يأخذ القائد الذي بجانبه",
  "a dead driver leaves a gate half on: its switch shorts":
    "القائد الميت يترك البوابة نصف مفتوحة: فيقصر مفتاحها",
  "a dry bootstrap or drive-rail capacitor lets a switch run linear":
    "مكثف جاف للرفع الذاتي أو لخط القيادة يجعل المفتاح يعمل خطيا",
  "15 V or bus voltage reaches the controller pin on the same net":
    "15 V أو جهد الناقل يصل إلى طرف المتحكم على العقدة نفسها",
  "a shorted supply switch opens the fuse or fuse resistor before it":
    "مفتاح المصدر المقصور يفتح المصهر أو المقاومة المصهرية قبله",
  "where no fuse resistor stands before it, the line fuse": "وإن لم تكن قبله مقاومة مصهرية فمصهر الخط",
  "drain voltage reaches the control side: opto, reference, supply clamp":
    "جهد المصرف يصل إلى جانب التحكم: الرابط الضوئي والمرجع ومحدد التغذية",
  "drain voltage reaches the control side: the low resistor that feeds it from its own winding burns":
    "جهد المصرف يصل إلى جانب التحكم: تحترق المقاومة الصغيرة التي تغذيه من لفيفته",
  "the last gulp of a dying supply switch lifts its rails: their clamps short":
    "آخر دفعة من مفتاح مصدر يحتضر ترفع خطوطه: فتقصر محدداتها",
  "an opto whose output took the drain passes on to the reference":
    "الرابط الضوئي الذي أصاب المصرف خرجه يمرره إلى المرجع",
  "without its clamp the supply switch is over-volted": "بلا محدده يتعرض مفتاح المصدر لجهد زائد",
  "with the feedback open every rail rises: what hangs on it dies":
    "بانفتاح التغذية الراجعة يرتفع كل خط: ويموت ما يتعلق به",
  "a regulator shorted through over-volts what it feeds":
    "المنظم المقصور من طرف إلى طرف يعطي جهدا زائدا لما يغذيه",
  "dirt from a gate to the bus or a supply turns the switch on":
    "أوساخ من بوابة إلى الناقل أو تغذية تشغل المفتاح",
  "dirt from a module input to another input or a rail drives its switch against its partner":
    "أوساخ من دخل للوحدة إلى دخل آخر أو خط تدفع مفتاحه ضد شريكه",
  "dirt that brings a higher rail to a controller pin kills the pin":
    "أوساخ توصل خطا أعلى إلى طرف المتحكم تقتل الطرف",
  "with less resonant or bus capacitance the switch sees more volts than it stands":
    "مع سعة أقل للرنين أو الناقل يرى المفتاح جهدا فوق ما يحتمل",
  "a shorted coil or resonant capacitor puts the bus across the switch at its first pulse":
    "الملف أو مكثف الرنين المقصور يضع الناقل على المفتاح عند أول نبضة",
  "a drifted or open chain from the coil turns the switch on at the wrong moment":
    "سلسلة منحرفة أو مفتوحة من الملف تشغل المفتاح في لحظة خاطئة",
  "a dry capacitor lets the drive rail sag: the switch runs linear":
    "مكثف جاف يجعل خط القيادة يهبط: فيعمل المفتاح خطيا",
  "no limiter stands before it: the shorted switch takes bridge junctions":
    "لا محدد قبله: المفتاح المقصور يأخذ وصلات من الجسر",
  "{0} readings": {
    en: "1 reading",
    zero: "لا قراءات",
    one: "قراءة واحدة",
    two: "قراءتان",
    few: "{0} قراءات",
    many: "{0} قراءة",
    other: "{0} قراءة",
  },
};
