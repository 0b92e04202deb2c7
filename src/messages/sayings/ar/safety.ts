import type { Sayings } from "../../said.ts";

export const SAFETY: Sayings = {
  "Unplug it and wait 5 to 15 minutes: what is stored does not need the mains.":
    "انزع القابس وانتظر من 5 إلى 15 دقيقة: ما هو مخزن لا يحتاج إلى الشبكة.",
  "Meter and leads marked CAT III, or CAT II at least, for these volts.":
    "مقياس وأسلاك تحمل علامة CAT III، أو CAT II على الأقل، لهذا الجهد.",
  "Highest DC range, one hand, probes on the capacitor's own pins: bleeders and dark LEDs prove nothing.":
    "أعلى مدى للجهد المستمر، يد واحدة، والمجسان على طرفي المكثف نفسه: مقاومات التفريغ والثنائيات المضيئة المطفأة لا تثبت شيئا.",
  "Discharge through the resistor with insulated clips, never with a screwdriver; the resistor gets hot.":
    "فرغ الشحنة عبر المقاومة بمشابك معزولة، لا بمفك براغ أبدا؛ والمقاومة تسخن.",
  "The resistor may still be hot: hold it by its insulated clips.":
    "قد تكون المقاومة ما زالت ساخنة: أمسكها من مشابكها المعزولة.",
  "Switch off, pull the plug, and count the bus as charged until it has been measured again.":
    "أطفئ، وانزع القابس، واعتبر الناقل مشحونا إلى أن يقاس من جديد.",
  "The bus can creep back up, a large capacitor to 10 to 50 V: if anything was left a while, measure its volts again before touching.":
    "قد يعود جهد الناقل إلى الارتفاع ببطء، والمكثف الكبير إلى ما بين \u206810\u2069 و \u206850 V\u2069: إن ترك شيء مدة فقس جهده من جديد قبل اللمس.",
  "A capacitor may hold charge in the hand too: empty it through the resistor before it goes in.":
    "قد يحمل المكثف شحنة وهو في اليد أيضا: فرغه عبر المقاومة قبل تركيبه.",
  "Do not turn the motor or a fan while it is plugged in: it charges the bus. If it turned, say so.":
    "لا تدر المحرك أو المروحة وهي موصولة: فهي تشحن الناقل. وإن دارت فاذكر ذلك.",
  "An insulation tester goes on the motor alone: plug out, its leads joined, against its frame. Never on the board.":
    "يوضع مقياس العزل على المحرك وحده: القابس منزوع، وأسلاكه مجموعة، مقابل هيكله. لا على اللوحة أبدا.",
  "No insulation tester on a populated board: it kills chips and over-volts capacitors.":
    "لا مقياس عزل على لوحة عليها قطع: فهو يتلف الشرائح ويتجاوز جهد المكثفات.",
  "What has been powered counts as charged: prove every capacitor empty once more before it is packed or handed over.":
    "كل ما شغل يعد مشحونا: أثبت خلو كل مكثف مرة أخرى قبل التغليف أو التسليم.",
  "Hot iron and fumes: eye protection and extraction; gloves for burnt resin.":
    "كاوية ساخنة وأبخرة: وقاية للعينين وشفط؛ وقفازات للراتنج المحترق.",
  "Take a picture first. No power until it is fully dry: hours of warm air, not minutes.":
    "التقط صورة أولا. لا جهد حتى تجف تماما: ساعات من الهواء الدافئ، لا دقائق.",
  "Pads lift, most of all on single-sided boards: add fresh solder, preheat, do not pull.":
    "نقاط اللحام ترتفع، وخاصة في اللوحات أحادية الوجه: أضف لحاما جديدا، سخن مسبقا، لا تشد.",
  "Fit the same insulation pad and fresh paste as before; then check the tab against the heatsink.":
    "ركب الوسادة العازلة نفسها ومعجونا جديدا كما كان؛ ثم افحص اللسان المعدني مقابل المشتت.",
  "Hands off while it is live: clip meters on before power, cover the board, wear eye protection, parts can burst.":
    "أبعد يديك ما دامت تحت الجهد: ثبت المقاييس قبل التشغيل، غط اللوحة، البس وقاية للعينين، فقد تنفجر القطع.",
  "Bus minus is at mains potential, and a heatsink may be.":
    "سالب الناقل على جهد الشبكة، وقد يكون المشتت كذلك.",
  "The isolation transformer feeds this board alone and passes no earth on; a residual-current breaker (RCD) behind it does nothing.":
    "محول العزل يغذي هذه اللوحة وحدها ولا يمرر الأرض؛ وقاطع التسرب (RCD) خلفه لا يفعل شيئا.",
  "Best is an isolation transformer for the board alone. A residual-current breaker (RCD) helps, but it does not see a touch across the bus or from line to neutral.":
    "الأفضل محول عزل للوحة وحدها. قاطع التسرب (RCD) يساعد، لكنه لا يرى لمسا على طرفي الناقل أو من الطور إلى المحايد.",
  "No earth clip of the oscilloscope on bus minus, which is a short: isolate the board, never the instrument, or use a differential probe.":
    "لا مشبك أرضي لراسم الإشارة على سالب الناقل، فهو قصر: اعزل اللوحة، لا الجهاز أبدا، أو استعمل مجسا تفاضليا.",
  "The lamp limits what the mains gives, not the energy stored in the bus capacitors.":
    "المصباح يحد ما تعطيه الشبكة، لا الطاقة المخزنة في مكثفات الناقل.",
  "Check the polarity twice and never exceed the rail's own voltage.":
    "تحقق من القطبية مرتين ولا تتجاوز جهد الخط نفسه أبدا.",
  "Volts and current limit are set with the output off, then it is clipped on: 0.4 V at most to begin with.":
    "يضبط الفولت وحد التيار والخرج مطفأ، ثم تثبت المشابك: \u20680.4 V\u2069 على الأكثر في البداية.",
  "A shorted ceramic or tantalum that is fed can crack, burst or glow: low volts first, output off at the first smell or smoke.":
    "المكثف السيراميكي أو التنتالوم الذي فيه قصر إذا غذي قد يتشقق أو ينفجر أو يتوهج: جهد منخفض أولا، وأطفئ الخرج عند أول رائحة أو دخان.",
  "Hands off while it is live: only read the meter that hangs on it.":
    "أبعد يديك ما دامت تحت الجهد: اقرأ فقط المقياس المثبت عليها.",
  "Local codes and the rules for licensed electrical work come first; where they say otherwise, follow them.":
    "الأنظمة المحلية وقواعد العمل الكهربائي المرخص أولا؛ وحيث تقول غير ذلك فاتبعها.",
  "Series lamp {0} (filament or halogen, never LED): it passes at most about {1}, and the board draws about under 1 W at idle.":
    "مصباح توال {0} (بفتيل أو هالوجين، لا LED أبدا): يمرر على الأكثر نحو {1}، واللوحة تسحب أقل من نحو \u20681 W\u2069 دون حمل.",
  "Series lamp {0} (filament or halogen, never LED): it passes at most about {1}, and the board draws about {2} at idle.":
    "مصباح توال {0} (بفتيل أو هالوجين، لا LED أبدا): يمرر على الأكثر نحو {1}، واللوحة تسحب نحو {2} دون حمل.",
  "That is little: slow pulsing may only mean that the lamp is too small.":
    "هذا قليل: قد يعني النبض البطيء فقط أن المصباح صغير جدا.",
  "This bench lists no series lamp: a 100 W filament lamp in series would save parts if a short is left. Without one, power up only through the right fuse and a breaker you can reach.":
    "لا مصباح توال في هذه الطاولة: مصباح بفتيل \u2068100 W\u2069 على التوالي يوفر القطع إن بقي قصر. ودونه لا تشغل إلا عبر المصهر الصحيح وقاطع تصل إليه يدك.",
  "{0} has not been read": "لم يقرأ {0}",
  "{0}: pull its plug, and read its windings and its insulation before it is driven":
    "{0}: انزع قابسه، واقرأ لفائفه وعزله قبل تشغيله",
  "a winding of {0} is open": "لفيفة في {0} مفتوحة",
  "the windings of {0} are not alike ({1} to {2})": "لفائف {0} غير متساوية ({1} إلى {2})",
  "the insulation of {0} to earth could not be read": "تعذرت قراءة عزل {0} إلى الأرض",
  "{0} reads under {1} to earth; cold and full a compressor reads low: read it again warm":
    "{0} يقرأ أقل من {1} إلى الأرض؛ والضاغط البارد الممتلئ يقرأ منخفضا: اقرأه من جديد وهو دافئ",
  "{0} reads under {1} to earth": "{0} يقرأ أقل من {1} إلى الأرض",
  "A hermetic compressor reads over {0}; lower when cold and full: then again warm; the maker's limit goes before it.":
    "الضاغط المحكم يقرأ أكثر من {0}؛ وأقل إذا كان باردا وممتلئا: فحينئذ من جديد وهو دافئ؛ وحد الصانع مقدم عليه.",
  "Common practice is over {0}; the maker's limit goes before it.":
    "المعتاد أكثر من {0}؛ وحد الصانع مقدم عليه.",
  "{0}, or overrule with a reason (overrule motor WHY)": "{0}، أو تجاوزه مع ذكر السبب (overrule motor WHY)",
  "{0} is still clipped on between {1} and {2}: take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live":
    "{0} ما زالت مثبتة بين {1} و {2}: انزعها قبل التشغيل (unclip)، أو تجاوز ذلك مع ذكر السبب؛ فإن تركت احترقت ومدت إليها اليد تحت الجهد",
  "{0} is still clipped on between {1} and {2} (and {3} more): take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live":
    "{0} ما زالت مثبتة بين {1} و {2} (و {3} غيرها): انزعها قبل التشغيل (unclip)، أو تجاوز ذلك مع ذكر السبب؛ فإن تركت احترقت ومدت إليها اليد تحت الجهد",
};
