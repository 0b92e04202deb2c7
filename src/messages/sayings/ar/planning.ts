import type { Sayings } from "../../said.ts";

export const PLANNING: Sayings = {
  "lowest at none of them in particular": "ليس الأدنى عند أي منها بعينه",
  "lowest at {0}": "الأدنى عند {0}",
  "next to no amps, nothing warm": "تيار يكاد لا يوجد، ولا شيء دافئ",
  "none of the parts warm": "لا قطعة دافئة",
  "{0} warmest": "{0} الأدفأ",
  "{0}, none of the parts warm": "{0}، ولا قطعة دافئة",
  "{0}, {1} warmest": "{0}، و {1} الأدفأ",
  beep: "صفير",
  silent: "صامت",
  zero: "قرب الصفر",
  junction: "وصلة ثنائية",
  high: "مرتفع",
  "no answer": "لا جواب",
  "It runs. Before it is handed back: {0} is left that something weak is still in it, and a board that comes back costs more than this look.":
    "إنها تعمل. قبل تسليمها: يبقى احتمال {0} أن فيها شيئا ضعيفا بعد، واللوحة التي تعود تكلف أكثر من هذه النظرة.",
  "high at every part": "مرتفع عند كل قطعة",
  "Milliohms along the {0} rail fall towards its short: take them at the pins of each part, the lowest is the short.":
    "تنقص قيم الملي أوم على امتداد الخط {0} كلما اقتربت من القصر: قسها عند أطراف كل قطعة، والأدنى هو القصر.",
  "no price is agreed yet: counted with the shop's usual {0}":
    "لم يتفق على سعر بعد: حسب سعر الورشة المعتاد {0}",
  "{0} is dead and cannot be bought: everything fitted before is wasted":
    "{0} تالف ولا يمكن شراؤه: كل ما ركب قبله ضائع",
  "{0} is good and something else is the fault": "{0} سليم والعطل شيء آخر",
  "there is {0} too, which would take the new {1} with it": "يوجد أيضا {0}، وسيتلف {1} الجديد معه",
  "{0} is faulty too and would take the new {1} with it": "{0} معطل أيضا وسيتلف {1} الجديد معه",
  "Contact {0} of {1} goes back on before anything is powered.":
    "يعود التماس {0} من {1} إلى مكانه قبل تشغيل أي شيء.",
  "Pin {0} of {1} goes back on its pad before anything is powered.":
    "يعود الطرف {0} من {1} إلى نقطة لحامه قبل تشغيل أي شيء.",
  "{0} reads good and goes back before anything is powered.":
    "{0} قراءته سليمة ويعود إلى مكانه قبل تشغيل أي شيء.",
  "{0} is off the board and not to be trusted: a new one goes in.":
    "{0} منزوع عن اللوحة ولا يوثق به: يركب جديد.",
  "The joints of {0} are new: read it again before it is replaced after all.":
    "لحامات {0} جديدة: اقرأه من جديد قبل استبداله.",
  "lower than before it went in and than the board explains: something lies across it, or it took harm":
    "أدنى مما كان قبل تركيبه ومما تفسره اللوحة: هناك شيء على طرفيه، أو أصابه ضرر",
  "higher than before it went in, which nothing across it can do: a joint is poor, or it is another part":
    "أعلى مما كان قبل تركيبه، ولا شيء على طرفيه يفعل ذلك: لحام رديء، أو هي قطعة أخرى",
  "a short where there was none before it went in: a bridge of solder, or it died in fitting":
    "قصر لم يكن قبل تركيبه: جسر لحام، أو تلف أثناء التركيب",
  "{0} reads {1}. Take this one again before power, on clean metal.":
    "قراءة {0}: {1}. أعد هذه القراءة قبل التشغيل، على معدن نظيف.",
  "ON THE BOARD": "على اللوحة",
  "ON THE PART IN YOUR HAND": "على القطعة التي في يدك",
  "For a ceramic speak an edge, a screw or a connector close by, and ohms that jump under light pressure; for a chip, other pins of it that read low too.":
    "يدل على السيراميكي قرب حافة أو برغي أو موصل، وأوم يقفز تحت ضغط خفيف؛ ويدل على الشريحة أن أطرافا أخرى منها تقرأ منخفضة أيضا.",
  "A ceramic is hot at one end, a chip in the middle of its package.":
    "السيراميكي ساخن عند أحد طرفيه، والشريحة في وسط غلافها.",
  anything: "أي شيء",
  "anything else": "أي شيء آخر",
  "It ran after the repair, under load as well, and nothing has been changed since. Write it up and hand it back. What is left unproven: {0} that something weak is still in it.":
    "عملت بعد الإصلاح، وتحت الحمل أيضا، ولم يغير شيء منذ ذلك. دون ذلك وسلمها. ما بقي دون إثبات: {0} أن فيها شيئا ضعيفا بعد.",
  "It ran after the repair and nothing has been changed since. Load it until it is warm through (20 to 30 minutes), then write it up and hand it back. What is left unproven: {0} that something weak is still in it.":
    "عملت بعد الإصلاح ولم يغير شيء منذ ذلك. حملها حتى تسخن كلها (من 20 إلى 30 دقيقة)، ثم دون ذلك وسلمها. ما بقي دون إثبات: {0} أن فيها شيئا ضعيفا بعد.",
  "It ran as it came, under load as well, with nothing replaced: no fault found on this board; look at what it is connected to. What is left unproven: {0} that something weak is still in it.":
    "عملت كما وصلت، وتحت الحمل أيضا، دون استبدال شيء: لا عطل في هذه اللوحة؛ انظر فيما توصل به. ما بقي دون إثبات: {0} أن فيها شيئا ضعيفا بعد.",
  "It ran as it came, with nothing replaced: no fault found on this board; look at what it is connected to. What is left unproven: {0} that something weak is still in it.":
    "عملت كما وصلت دون استبدال شيء: لا عطل في هذه اللوحة؛ انظر فيما توصل به. ما بقي دون إثبات: {0} أن فيها شيئا ضعيفا بعد.",
  "across {0}, because what was fitted or soldered may be bad, in wrong, or bridged":
    "على طرفي {0}، لأن ما ركب أو لحم قد يكون تالفا أو مركبا خطأ أو مجسرا",
  "held against what was read before it went in": "مقارنا بما قرئ قبل تركيبه",
  "the bus both ways, because {0} hangs on it": "الناقل في الاتجاهين، لأن {0} موصول به",
  "the {0} rail both ways, because {1} hangs on it": "الخط {0} في الاتجاهين، لأن {1} موصول به",
  "Cold re-check before power: {0}. A second short behind the first is common.":
    "إعادة الفحص على البارد قبل التشغيل: {0}. وجود قصر ثان خلف الأول شائع.",
  "Screwed down: each lead of {0} to the heatsink in the highest ohms range, OL; less is a missing pad, a burr or a bridge of paste.":
    "بعد التثبيت بالبراغي: كل طرف من {0} إلى المشتت على أعلى مدى للأوم، OL؛ والأقل يعني وسادة ناقصة أو زائدة معدنية أو جسرا من المعجون.",
  "{0} is new and reads as if it were bad ({1}). Measure it by itself before another is fitted: either it came bad, or the board is not as drawn.":
    "{0} جديد ويقرأ كأنه تالف ({1}). قسه وحده قبل تركيب غيره: إما أنه وصل تالفا، أو أن اللوحة ليست كما رسمت.",
  "There may be {0} ({1}): clean and dry the place before anything else there is judged.":
    "ربما يوجد {0} ({1}): نظف الموضع وجففه قبل الحكم على أي شيء آخر هناك.",
  "The readings say that {0} is open ({1}). A cracked joint reads the same, and solder costs no part: make its joints anew, then read it again.":
    "تقول القراءات إن {0} مفتوح ({1}). اللحام المتشقق يقرأ مثله، واللحام لا يكلف قطعة: جدد لحاماته ثم اقرأه من جديد.",
  "{0} ({1}) would condemn the board, since it cannot be bought: it is measured by itself before the board is written off.":
    "{0} ({1}) يحكم على اللوحة بالتلف، إذ لا يمكن شراؤه: يقاس وحده قبل شطب اللوحة.",
  "No fault that the program knows explains these readings, taken again where they could be: the board may not be as drawn. It stops here; who goes on, goes by hand.":
    "لا عطل يعرفه البرنامج يفسر هذه القراءات، وقد أعيدت حيث أمكن: ربما ليست اللوحة كما رسمت. يتوقف هنا؛ ومن يتابع فبيده.",
  "No fault that the program knows explains these readings together. Take this one again, with both probes on clean metal, before anything is concluded.":
    "لا عطل يعرفه البرنامج يفسر هذه القراءات معا. أعد هذه القراءة والمجسان على معدن نظيف قبل استنتاج أي شيء.",
  "The best repair from here: {0}, {1} that it is enough.": "أفضل إصلاح من هنا: {0}، و {1} أن يكفي.",
  "tells little": "لا يدل على كثير",
  "{0}, rather than {1}": "{0}، لا {1}",
  "as on a good board": "كما في لوحة سليمة",
  "clears {0}": "يبرئ {0}",
  "less likely: {0}": "أقل احتمالا: {0}",
  "{0} ({1})": "{0} ({1})",
  "{0} ({1} each)": "{0} ({1} لكل منها)",
  "{0} or {1}": "{0} أو {1}",
  "under 1 %": "أقل من \u20681 %\u2069",
  "over 99 %": "أكثر من \u206899 %\u2069",
  "burnt, cracked, bulged or corroded": "محترق أو متشقق أو منتفخ أو متآكل",
  "{0} by itself reads faulty": "{0} وحده يقرأ معطلا",
  "{0} by itself reads good": "{0} وحده يقرأ سليما",
  "Off the board the meter sees {0} alone.": "خارج اللوحة لا يرى المقياس إلا {0}.",
  "With pin {0} of {1} free the meter sees {2} alone.": "والطرف {0} من {1} محرر لا يرى المقياس إلا {2}.",
  "none of them gets warm": "لا شيء منها يدفأ",
  "Feed the {0} rail with {1}, limit {2}: healthy silicon stays off, all current flows in the short.":
    "غذ الخط {0} بـ {1}، والحد {2}: السليكون السليم لا يوصل، وكل التيار يمر في القصر.",
  "Feed the {0} rail with a {1} rechargeable cell through {2}.": "غذ الخط {0} بخلية قابلة للشحن {1} عبر {2}.",
  "Of the parts across the rail the warmest is the short; what feeds it in series runs hotter and does not count. Below 0.05 ohm it stays cold.":
    "أدفأ القطع الموصولة على الخط هي القصر؛ وما يغذيه على التوالي أسخن منه ولا يحسب. وتحت \u20680.05 ohm\u2069 يبقى باردا.",
  "Clip it on with the output off, plus on its 0 V ({0}) and minus on {1}, for the rail is negative, then hands off.":
    "ثبت المشابك والخرج مطفأ، الموجب على \u20680 V\u2069 الخاص به ({0}) والسالب على {1}، لأن الخط سالب، ثم أبعد يديك.",
  "Clip it on with the output off, plus on {0}, then hands off.":
    "ثبت المشابك والخرج مطفأ، الموجب على {0}، ثم أبعد يديك.",
  "{0}, limit {1}": "{0}، الحد {1}",
  "{0} cell through {1}": "خلية {0} عبر {1}",
  "which part of the rail takes the current": "أي قطعة من الخط تأخذ التيار",
  "one part is clearly warmer than the rest": "قطعة أدفأ من غيرها بوضوح",
  "the current rises, or anything smells": "يرتفع التيار أو تظهر رائحة",
  "{0} is below every junction: nothing that is whole is harmed.": "{0} تحت جهد كل وصلة: لا يتضرر شيء سليم.",
  "{0} is below the rail's own volts: nothing that is whole is harmed.":
    "{0} تحت جهد الخط نفسه: لا يتضرر شيء سليم.",
  "Current limit first, then the clips, then the output.": "حد التيار أولا، ثم المشابك، ثم الخرج.",
  "The resistor in series first, then the clips, the cell last.":
    "المقاومة على التوالي أولا، ثم المشابك، والخلية أخيرا.",
  "At {0} nothing stands out: turn it up to {1}, limit {2}, the clips as they are, hands off.":
    "عند {0} لا يبرز شيء: ارفعه إلى {1}، والحد {2}، والمشابك كما هي، وأبعد يديك.",
  "At {0} nothing stands out, nor would a short of these ohms: turn it up to {1}, limit {2}, the clips as they are, hands off.":
    "عند {0} لا يبرز شيء، ولا كان قصر بهذا الأوم ليبرز: ارفعه إلى {1}، والحد {2}، والمشابك كما هي، وأبعد يديك.",
  "The {0} rail is fed: after a minute one picture from the camera tells which part across it is warmest.":
    "الخط {0} مغذى: بعد دقيقة تبين صورة واحدة من الكاميرا أي قطعة عليه هي الأدفأ.",
  "The {0} rail is fed: after a minute the spot thermometer from a hand's breadth away tells which part across it is warmest.":
    "الخط {0} مغذى: بعد دقيقة يبين مقياس الحرارة النقطي من مسافة عرض كف أي قطعة عليه هي الأدفأ.",
  "Hands off the board.": "أبعد يديك عن اللوحة.",
  "{0} still reads low": "{0} ما زال يقرأ منخفضا",
  "{0} reads high": "{0} يقرأ مرتفعا",
  "With one end of {0} up the {1} rail is in two halves; ohms from {2} to {3} tell in which the short is.":
    "برفع أحد طرفي {0} ينقسم الخط {1} نصفين؛ والأوم من {2} إلى {3} يبين في أيهما القصر.",
  "Milliohm meter, four wires, on each part's own two pins.":
    "مقياس ملي أوم بأربعة أسلاك على طرفي كل قطعة نفسها.",
  "Bench supply at {0}, limit {1}: clip it and the meter (millivolts) to the part's own two pins with the output off, switch the output on, read volts over amps, switch it off before the clips move.":
    "مصدر المختبر على {0}، والحد {1}: ثبته مع المقياس (ملي فولت) على طرفي القطعة نفسها والخرج مطفأ، شغل الخرج، اقرأ الفولت على الأمبير، وأطفئه قبل تحريك المشابك.",
  "A {0} rechargeable cell through {1}: clip it and the meter (millivolts) to the part's own two pins, close it, read; the amps are the volts across the resistor. Open it before the clips move.":
    "خلية قابلة للشحن {0} عبر {1}: ثبتها مع المقياس (ملي فولت) على طرفي القطعة نفسها، أغلق الدارة، اقرأ؛ والأمبير هو الفولت على المقاومة. افتحها قبل تحريك المشابك.",
  "The same reading once more: what it showed fits badly with the rest, and probes slip.":
    "القراءة نفسها مرة أخرى: ما أظهرته لا يوافق الباقي، والمجسات تنزلق.",
  "The same reading once more: much hangs on it, and a probe slips now and then.":
    "القراءة نفسها مرة أخرى: يتوقف عليها الكثير، والمجس ينزلق أحيانا.",
  "Read before {0} was replaced; once more now.": "قرئ قبل استبدال {0}؛ والآن مرة أخرى.",
  "Read before {0} was put back; once more now.": "قرئ قبل إعادة {0}؛ والآن مرة أخرى.",
  "Read before {0} was resoldered; once more now.": "قرئ قبل إعادة لحام {0}؛ والآن مرة أخرى.",
  "Read before the board area was resoldered; once more now.": "قرئ قبل إعادة لحام اللوحة؛ والآن مرة أخرى.",
  "Read before the {0} area was resoldered; once more now.": "قرئ قبل إعادة لحام منطقة {0}؛ والآن مرة أخرى.",
  "Read before {0} was cleaned; once more now.": "قرئ قبل تنظيف {0}؛ والآن مرة أخرى.",
  "Read before the board area was cleaned; once more now.": "قرئ قبل تنظيف اللوحة؛ والآن مرة أخرى.",
  "Read before the {0} area was cleaned; once more now.": "قرئ قبل تنظيف منطقة {0}؛ والآن مرة أخرى.",
  "Read before {0} pin {1} was soldered back; once more now.":
    "قرئ قبل إعادة لحام الطرف {1} من {0}؛ والآن مرة أخرى.",
  "Read before the board was powered; once more now.": "قرئ قبل تشغيل اللوحة؛ والآن مرة أخرى.",
  "the repeats read one way": "القراءات المعادة على نحو",
  "the repeats read another way": "القراءات المعادة على نحو آخر",
  "the repeats read a third way": "القراءات المعادة على نحو ثالث",
  "the repeats read way {0}": "القراءات المعادة على النحو {0}",
  "With the plug of {0} pulled, what hangs together through it stands apart. Then again, red to black: {1}.":
    "بنزع قابس {0} ينفصل ما يتصل عبره. ثم من جديد، الأحمر إلى الأسود: {1}.",
  "Nothing more is to be seen: output off, clips off.": "لا شيء آخر يرى: أطفئ الخرج وانزع المشابك.",
  "Write down the amps on the supply's own display once they stand still. No meter goes across the rail for it: in its amps range it is a short. Nothing on the board is touched; then switch off.":
    "دون الأمبير من شاشة المصدر نفسه عندما يثبت. لا يوضع مقياس على الخط لذلك: فهو على مدى الأمبير قصر. لا يلمس شيء على اللوحة؛ ثم أطفئ.",
  "The current rises or something grows hot: switch off at once.": "يرتفع التيار أو يسخن شيء: أطفئ فورا.",
  "The red probe stays where it is: take the whole row.": "يبقى المجس الأحمر مكانه: خذ الصف كله.",
  "The black probe stays where it is: take the whole row.": "يبقى المجس الأسود مكانه: خذ الصف كله.",
  "The meter is set already: take the whole row.": "المقياس مضبوط سلفا: خذ الصف كله.",
  "A look at {0} costs next to nothing, and nobody has taken it yet.":
    "النظر إلى {0} لا يكاد يكلف شيئا، ولم ينظر إليه أحد بعد.",
  "Damage on {0} would speak for {1}; a clean body clears nothing for certain.":
    "الضرر على {0} يدل على {1}؛ والجسم النظيف لا يبرئ شيئا على وجه اليقين.",
  "Cheap, and nothing has tested it yet.": "رخيص، ولم يختبره شيء بعد.",
  "Shows whether {0}.": "يبين هل {0}.",
  "Shows which of these it is, if any: {0}.": "يبين أي هذه هو، إن كان منها: {0}.",
  "{0} cannot be bought: a reading that accuses it ({1}) may end the job, so this comes before more money is spent.":
    "{0} لا يمكن شراؤه: قراءة تتهمه ({1}) قد تنهي العمل، فهذا يسبق إنفاق مزيد من المال.",
  "{0} cannot be bought: a reading that accuses it ({1}) may end the job, so this comes before any money is spent.":
    "{0} لا يمكن شراؤه: قراءة تتهمه ({1}) قد تنهي العمل، فهذا يسبق إنفاق أي مال.",
  "{0} ({1}, likeliest {2})": "{0} ({1}، والأرجح: {2})",
  "{0}: no check left is worth its minutes before that.": "{0}: لم يبق فحص يستحق دقائقه قبل ذلك.",
  "Due with it before the next power-up: {0}.": "ويلزم معه قبل التشغيل التالي: {0}.",
  "{0} last: fitted before what blew it, a fuse blows again.":
    "{0} أخيرا: المصهر الذي يركب قبل إصلاح ما أحرقه يحترق من جديد.",
  "After that, {0} that the board is whole.": "بعد ذلك {0} أن اللوحة سليمة.",
  "{0} is dead ({1}) and nobody sells it. Anything fitted now is money lost.":
    "{0} تالف ({1}) ولا أحد يبيعه. كل ما يركب الآن مال ضائع.",
  "By the readings this board is more likely whole ({0}) than not, yet it has not been seen to run, and nothing left on this bench tells why. Before it is given back: what tells it to run may be missing (a command, a door or float switch, a sensor, the fan's signal). Try it in its own unit.":
    "بحسب القراءات فهذه اللوحة أرجح أن تكون سليمة ({0}) من ألا تكون، لكنها لم تر تعمل، ولا شيء بقي على هذه الطاولة يبين السبب. قبل إعادتها: ربما غاب ما يأمرها بالعمل (أمر، أو مفتاح باب أو عوامة، أو حساس، أو إشارة المروحة). جربها في جهازها.",
  "What is left to find and to replace would cost more in minutes and parts than the repair earns.":
    "ما بقي للبحث والاستبدال يكلف من الدقائق والقطع أكثر مما يكسبه الإصلاح.",
  "The likeliest repair from here is {0}: {1} of parts, {2}, and {3} that it is enough. Weighed with what a failed try costs, that is worth less than stopping, at {4} for the repair.":
    "أرجح إصلاح من هنا هو {0}: قطع بمبلغ {1}، و {2}، و {3} أن يكفي. وإذا حسبت كلفة محاولة فاشلة فهو أقل قيمة من التوقف، بسعر إصلاح {4}.",
  "{0} has to be ordered.": "{0} يجب طلبه.",
  "For {0} one lies at hand.": "يوجد واحد في المتناول من أجل {0}.",
  "For {0} {1} lies at hand.": "يوجد {1} في المتناول من أجل {0}.",
  "For {0} one lies at hand, pulled: read it in the hand before it goes in.":
    "يوجد واحد في المتناول من أجل {0}، مستعمل منزوع: يقاس في اليد قبل تركيبه.",
  "For {0} {1} lies at hand, pulled: read it in the hand before it goes in.":
    "يوجد {1} في المتناول من أجل {0}، مستعمل منزوع: يقاس في اليد قبل تركيبه.",
  "There are {0}: {1} needs another.": {
    en: "There is one: {1} needs another.",
    zero: "لا يوجد ({0}): يحتاج {1} إلى غيره.",
    one: "يوجد واحد ({0}): يحتاج {1} إلى غيره.",
    two: "يوجد اثنان ({0}): يحتاج {1} إلى غيرهما.",
    few: "يوجد {0}: يحتاج {1} إلى غيرها.",
    many: "يوجد {0}: يحتاج {1} إلى غيرها.",
    other: "يوجد {0}: يحتاج {1} إلى غيرها.",
  },
  "There are {0}: {1} need others.": {
    en: "There is one: {1} need others.",
    zero: "لا يوجد ({0}): تحتاج {1} إلى غيرها.",
    one: "يوجد واحد ({0}): تحتاج {1} إلى غيره.",
    two: "يوجد اثنان ({0}): تحتاج {1} إلى غيرهما.",
    few: "يوجد {0}: تحتاج {1} إلى غيرها.",
    many: "يوجد {0}: تحتاج {1} إلى غيرها.",
    other: "يوجد {0}: تحتاج {1} إلى غيرها.",
  },
  "There are {0}; for {1} {2} lies at hand.": {
    en: "There is one; for {1} {2} lies at hand.",
    zero: "لا يوجد ({0})؛ ويوجد {2} في المتناول من أجل {1}.",
    one: "يوجد واحد ({0})؛ ويوجد {2} في المتناول من أجل {1}.",
    two: "يوجد اثنان ({0})؛ ويوجد {2} في المتناول من أجل {1}.",
    few: "يوجد {0}؛ ويوجد {2} في المتناول من أجل {1}.",
    many: "يوجد {0}؛ ويوجد {2} في المتناول من أجل {1}.",
    other: "يوجد {0}؛ ويوجد {2} في المتناول من أجل {1}.",
  },
};
