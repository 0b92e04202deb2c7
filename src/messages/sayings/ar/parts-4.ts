import type { Sayings } from "../../said.ts";

export const PARTS_4: Sayings = {
  "each 0.3 to 0.7 V": "كل منها 0.3 إلى 0.7 V",
  "the three of one module agree within 20 mV, most often at 0.36 to 0.46 V":
    "الثلاثة في الوحدة متفقة ضمن 20 mV، وغالبا عند 0.36 إلى 0.46 V",
  "9 to 15 V from gate to the lower pin for a moment, through 1 kohm":
    "9 إلى 15 V من البوابة إلى الطرف السفلي لحظة، عبر 1 kohm",
  "now it conducts: a few tenths of a volt": "الآن يوصل: بضعة أعشار الفولت",
  "wait ten seconds, gate open": "الانتظار عشر ثوان والبوابة حرة",
  "it still conducts: the gate holds and does not leak": "ما زال يوصل: البوابة تحفظ ولا تسرب",
  "short the gate to the lower pin": "قصر البوابة مع الطرف السفلي",
  "off again: OL": "مطفأ من جديد: OL",
  "threshold: gate joined to the upper pin, a bench supply through 10 kohm":
    "العتبة: البوابة موصولة بالطرف العلوي، ومصدر المختبر عبر 10 kohm",
  "3 to 7 V for an IGBT, 2 to 5 V for a MOSFET": "3 إلى 7 V لترانزستور IGBT، و 2 إلى 5 V لترانزستور MOSFET",
  "capacitance gate to lower pin, beside a genuine one": "السعة بين البوابة والطرف السفلي، بجانب قطعة أصلية",
  "alike within a fifth; far less is a small die": "متماثلة ضمن الخمس؛ الأقل بكثير رقاقة صغيرة",
  "marking and legs": "الكتابة والأرجل",
  "laser print of the maker's kind, no second coat of black, legs straight and bright":
    "طباعة ليزر كطباعة الصانع، دون طبقة سوداء ثانية، وأرجل مستقيمة لامعة",
  "short gate to emitter first, then diode mode, red on C, black on E":
    "قصر البوابة مع الباعث أولا، ثم وضع الثنائي، الأحمر على C والأسود على E",
  "diode mode, red on E, black on C": "وضع الثنائي، الأحمر على E والأسود على C",
  "0.35 to 0.55 V with a diode inside, OL without": "0.35 إلى 0.55 V مع ثنائي في الداخل، و OL دونه",
  "diode mode, gate to emitter and gate to collector, both ways":
    "وضع الثنائي، البوابة إلى الباعث والبوابة إلى المجمع، في الاتجاهين",
  "OL all four": "OL في الأربع",
  "short gate to source first, then diode mode, red on D, black on S":
    "قصر البوابة مع المنبع أولا، ثم وضع الثنائي، الأحمر على D والأسود على S",
  "diode mode, red on S, black on D": "وضع الثنائي، الأحمر على S والأسود على D",
  "0.4 to 0.7 V": "0.4 إلى 0.7 V",
  "diode mode, gate to source and gate to drain, both ways":
    "وضع الثنائي، البوابة إلى المنبع والبوابة إلى المصرف، في الاتجاهين",
  "diode mode, red on U, V, W, black on P": "وضع الثنائي، الأحمر على U و V و W والأسود على P",
  "diode mode, red on each N, black on U, V, W": "وضع الثنائي، الأحمر على كل N والأسود على U و V و W",
  "compare the three of each row": "مقارنة الثلاثة في كل صف",
  "the same six with the leads swapped": "الستة نفسها مع تبديل السلكين",
  "OL all six": "OL في الست",
  "V15 to COM and each VB to its VS, both ways": "V15 إلى COM وكل VB إلى VS الخاص به، في الاتجاهين",
  "no short; three alike": "لا قصر؛ والثلاثة متماثلة",
  "each input to COM, both ways": "كل دخل إلى COM، في الاتجاهين",
  "six alike, about 5 kohm or one diode drop": "الستة متماثلة، نحو 5 kohm أو هبوط ثنائي واحد",
  "fault and trip pins to COM": "طرفا العطل والفصل إلى COM",
  "no short": "لا قصر",
  "leads joined, to the base plate, insulation tester or the highest ohms":
    "الأرجل مجموعة، إلى صفيحة القاعدة، بمقياس العزل أو أعلى مدى للأوم",
  "over 20 Mohm": "فوق 20 Mohm",
  "pins and base": "الأطراف والقاعدة",
  "no cracked base, no pulled pin, old paste off": "لا قاعدة متشققة، ولا طرف منزوع، والمعجون القديم مزال",
  "diode mode, red on A, black on K, silicon": "وضع الثنائي، الأحمر على A والأسود على K، سيليكون",
  "0.40 to 0.80 V; a large fast one reads at the low end":
    "0.40 إلى 0.80 V؛ الكبير السريع يقرأ عند الطرف الأدنى",
  "the same, Schottky": "نفسه، شوتكي",
  "0.1 to 0.45 V": "0.1 إلى 0.45 V",
  "the same, silicon carbide": "نفسه، كربيد السيليكون",
  "0.75 to 0.85 V": "0.75 إلى 0.85 V",
  "leads swapped": "السلكان مبدلان",
  "OL; a Schottky may show over 1 V": "OL؛ قد يظهر شوتكي فوق 1 V",
  "diode mode, each AC pin to plus, minus to each AC pin":
    "وضع الثنائي، كل طرف متردد إلى الموجب، والسالب إلى كل طرف متردد",
  "each 0.2 to 0.8 V": "كل منها 0.2 إلى 0.8 V",
  "compare the four": "مقارنة الأربعة",
  "alike within 20 mV, most often at 0.42 to 0.55 V": "متماثلة ضمن 20 mV، وغالبا عند 0.42 إلى 0.55 V",
  "the same four with the leads swapped, and AC to AC both ways":
    "الأربعة نفسها مع تبديل السلكين، والمتردد إلى المتردد في الاتجاهين",
  "all legs joined, to the case face, highest ohms": "كل الأرجل مجموعة، إلى وجه الغلاف، أعلى مدى للأوم",
  "diode mode, red on A, black on K": "وضع الثنائي، الأحمر على A والأسود على K",
  "0.60 to 0.80 V": "0.60 إلى 0.80 V",
  "a bench supply above its volts through 10 kohm, K to plus":
    "مصدر المختبر فوق جهده عبر 10 kohm، و K إلى الموجب",
  "its volts, within the marking": "جهده، ضمن المكتوب عليه",
  "diode mode, base to emitter and base to collector": "وضع الثنائي، القاعدة إلى الباعث والقاعدة إلى المجمع",
  "NPN: red on B, PNP: black on B; 0.55 to 0.75 V, the emitter's a little more":
    "NPN: الأحمر على B، و PNP: الأسود على B؛ 0.55 إلى 0.75 V، والباعث أعلى قليلا",
  "collector to emitter, both ways": "المجمع إلى الباعث، في الاتجاهين",
  "0.40 to 0.60 V": "0.40 إلى 0.60 V",
  "supply and feedback pins to S, both ways": "طرفا التغذية والتغذية الراجعة إلى S، في الاتجاهين",
  "diode mode on the input, both ways": "وضع الثنائي على الدخل، في الاتجاهين",
  "0.95 to 1.20 V, OL the other way": "0.95 إلى 1.20 V، و OL في الاتجاه الآخر",
  "output, both ways, input dark": "الخرج، في الاتجاهين، والدخل مطفأ",
  "5 mA through the input, ohms across the output": "5 mA عبر الدخل، وأوم على الخرج",
  "falls to a few hundred ohms": "يهبط إلى بضع مئات أوم",
  "IN to OUT, OUT to GND, IN to GND, both ways": "IN إلى OUT، و OUT إلى GND، و IN إلى GND، في الاتجاهين",
  "a bench supply a few volts above its output, limit 50 mA":
    "مصدر المختبر فوق خرجه ببضعة فولتات، والحد 50 mA",
  "its volts within 4 %": "جهده ضمن 4 %",
  "REF joined to K, a bench supply through 1 kohm": "REF موصول بـ K، ومصدر المختبر عبر 1 kohm",
  "its volts within 2 %": "جهده ضمن 2 %",
  "within its tolerance; an electrolytic no less than 80 %": "ضمن تفاوته؛ والكيميائي لا يقل عن 80 %",
  "class, volts and degrees on the body": "الصنف والفولت والدرجات على الجسم",
  "as wanted, not only the colour": "كما هو مطلوب، لا اللون وحده",
  "ESR, beside a new one of its kind": "ESR، بجانب جديد من نوعه",
  "no more than twice as much": "لا يزيد على الضعف",
  "seal, top and feet": "السدادة والقمة والأسفل",
  "no dome, no stain, no soft seal": "لا انتفاخ ولا بقعة ولا سدادة لينة",
  "an electrolytic that lay over a year: its volts from a limited supply through 22 kohm 10 W, clipped on before power":
    "مكثف كيميائي خزن أكثر من سنة: جهده من مصدر محدود عبر 22 kohm 10 W، تثبت المشابك قبل التشغيل",
  "the current falls to its leakage within the hour: reformed; then discharge it and prove it below 10 V":
    "يهبط التيار إلى تسربه خلال ساعة: استعاد طبقته؛ ثم يفرغ ويثبت أنه دون 10 V",
  "highest ohms, both ways": "أعلى مدى للأوم، في الاتجاهين",
  "over 10 Mohm": "فوق 10 Mohm",
  "the coating": "الطلاء",
  "no crack, no soot": "لا شق ولا سخام",
  "ohms, cold": "أوم، باردا",
  "the marking within 20 %; it falls in the hand": "المكتوب ضمن 20 %؛ يهبط في اليد",
  "the marking within 20 %; it rises under hot air": "المكتوب ضمن 20 %؛ يرتفع بالهواء الساخن",
  "the discs": "الأقراص",
  "no crack": "لا شق",
  "below 0.1 ohm": "دون 0.1 ohm",
  "amps, volts, F or T, breaking capacity on the cap": "الأمبير والفولت و F أو T وقدرة القطع على الغطاء",
  "as wanted": "كما هو مطلوب",
  "ohms, out of circuit": "أوم، خارج الدارة",
  "the marking within its tolerance; a shunt by four wires":
    "المكتوب ضمن تفاوته؛ ومقاومة التحسس بأربعة أسلاك",
  "coil ohms": "أوم الملف",
  "the data sheet's within 10 %": "ما في ورقة البيانات ضمن 10 %",
  "contact, coil dark and coil fed": "التماس، والملف دون تغذية ثم بتغذية",
  "OL, then below 0.1 ohm": "OL، ثم دون 0.1 ohm",
  "the contacts, where they can be seen": "التماسات، حيث يمكن رؤيتها",
  "no bead, no soot": "لا حبة ذائبة ولا سخام",
  "supply pins to ground, both ways": "أطراف التغذية إلى الأرضي، في الاتجاهين",
  "a junction one way, no short": "وصلة ثنائية في اتجاه واحد، ولا قصر",
  "a few pins to ground": "بضعة أطراف إلى الأرضي",
  "alike, one diode drop": "متماثلة، هبوط ثنائي واحد",
  "board number and firmware label of the donor": "رقم اللوحة وملصق البرنامج الثابت للوحة المانحة",
  "the very same": "هي نفسها تماما",
  "supply to ground, both ways": "التغذية إلى الأرضي، في الاتجاهين",
  "no short, a junction one way": "لا قصر، ووصلة ثنائية في اتجاه واحد",
  "like pins among each other": "الأطراف المتشابهة فيما بينها",
  "leads joined, to the tab, insulation tester or the highest ohms":
    "الأرجل مجموعة، إلى اللسان المعدني، بمقياس العزل أو أعلى مدى للأوم",
  "tab to the middle pin": "اللسان المعدني إلى الطرف الأوسط",
  "below 1 ohm: live, so pad and bush are needed; OL: isolated":
    "دون 1 ohm: مكهرب، فتلزم وسادة وجلبة؛ OL: معزول",
  "Write these down: the cold re-check after soldering and after the last screw is compared with them.":
    "تكتب هذه القراءات: يقارن بها الفحص البارد بعد اللحام وبعد البرغي الأخير.",
  "clean both faces until no old paste is left; a pad that was squeezed once is replaced":
    "ينظف الوجهان حتى لا يبقى معجون قديم؛ والوسادة التي ضغطت مرة تبدل",
  "a thin even film of paste, no more than fills the grooves; a dry pad takes none":
    "طبقة معجون رقيقة متساوية لا تزيد على ملء الخدوش؛ والوسادة الجافة بلا معجون",
  "put the part on its heatsink with spacer, bush and pad, leads through the board, not soldered":
    "توضع القطعة على مبددها مع المباعد والجلبة والوسادة، والأرجل عبر اللوحة دون لحام",
  "snug all screws by hand, crosswise": "تشد كل البراغي باليد، بالتقاطع",
  "full torque, crosswise": "العزم الكامل، بالتقاطع",
  "solder now, so that no lead carries the pull of a screw": "يلحم الآن، حتى لا تحمل أي رجل شد برغي",
  "over 20 Mohm from each lead to the heatsink; read the junctions again, since a clamp can short a part that read well loose":
    "فوق 20 Mohm من كل رجل إلى المبدد؛ وتقرأ الوصلات من جديد، فقد يقصر المشبك قطعة كانت قراءتها سليمة وهي حرة",
  "taken off again: clean, new paste, from the start": "إذا نزعت من جديد: تنظف، ومعجون جديد، ومن البداية",
  "{0} to {1} N m, M3": "{0} إلى {1} N m، M3",
  "lead ends at most {0} out of the solder, and {1} of air from them to the heatsink; over a rebuilt area {2} along the surface, {3} where it is damp or dirty, and twice all of it towards what a hand may touch (bus of {4}; IEC 60664-1, seen at second hand)":
    "أطراف الأرجل لا تبرز من اللحام أكثر من {0}، ومنها إلى المشتت {1} في الهواء؛ وعلى منطقة أعيد بناؤها {2} على السطح، و{3} حيث رطوبة أو وسخ، وضعف ذلك كله نحو ما قد تلمسه يد (ناقل {4}؛ IEC 60664-1، منقول عن ثان)",
};
