import type { Translated } from "../catalogue.ts";
import type { ADVICE } from "./en.ts";

/** Arabic. */
export const ADVICE_AR = {
  "caution.charged": [
    "DANGER: the capacitors of this board can hold a deadly charge long after it is unplugged. Disconnect every supply, wait at least 15 minutes, then measure: bus plus to bus minus must read below 10 V before anything is touched.",
    "خطر: قد تحتفظ مكثفات هذه اللوحة بشحنة قاتلة مدة طويلة بعد فصلها. افصل كل مصادر التغذية، وانتظر 15 دقيقة على الأقل، ثم قس: يجب أن يكون الجهد بين موجب الناقل وسالبه أقل من \u206810 V\u2069 قبل لمس أي شيء.",
  ],
  "caution.live": [
    "With power on, every part of this board is at mains potential, bus minus included and the heatsink possibly too. Touch nothing.",
    "عند وجود الجهد تكون كل أجزاء اللوحة على جهد الشبكة، ومنها سالب الناقل وربما المشتت أيضا. لا تلمس شيئا.",
  ],
  "caution.licensed": [
    "Fitting, connecting and opening the unit is work for a licensed person under the local codes. This paper does not replace them, nor the maker's instructions.",
    "تركيب الجهاز وتوصيله وفتحه عمل شخص مرخص وفق الأنظمة المحلية. هذه الورقة لا تغني عنها ولا عن تعليمات الصانع.",
  ],
  "caution.smell": [
    "Smoke, a burnt smell, a tripped breaker or a blown fuse: switch off and do not try again.",
    "دخان أو رائحة احتراق أو قاطع فاصل أو مصهر محترق: افصل ولا تحاول مرة أخرى.",
  ],
  "advice.surge.protect": [
    "Have a surge protector fitted at the supply, its earth wire short, and have the earth itself checked.",
    "ركب واقيا من الجهود العابرة عند مصدر التغذية بسلك تأريض قصير، واطلب فحص التأريض نفسه.",
  ],
  "advice.surge.others": [
    "A surge may have hurt other units on the same supply: have them checked.",
    "قد يكون الجهد العابر أضر بأجهزة أخرى على المصدر نفسه: اطلب فحصها.",
  ],
  "advice.water.seal": [
    "Find where water or condensation got in and stop it there: cable entries from below, sealed, with a drip loop; drain holes kept open.",
    "ابحث عن موضع دخول الماء أو التكاثف وأوقفه هناك: مداخل الكابلات من الأسفل محكمة الإغلاق مع انحناءة لتقطير الماء، وفتحات التصريف مفتوحة.",
  ],
  "advice.water.later": [
    "Corrosion can go on under the parts: after water a later failure stays more likely than after other causes.",
    "قد يستمر التآكل تحت القطع: بعد الماء يبقى العطل اللاحق أرجح مما بعد الأسباب الأخرى.",
  ],
  "advice.overload.load": [
    "Find out why it was overloaded before it runs again: does the motor or fan turn freely, is anything blocked, are its windings and insulation sound?",
    "اعرف سبب الحمل الزائد قبل التشغيل من جديد: هل يدور المحرك أو المروحة بحرية، وهل هناك انسداد، وهل اللفائف والعزل سليمة؟",
  ],
  "advice.overload.air": [
    "Keep the heatsink and the path of its air clean.",
    "أبق المشتت ومسار هوائه نظيفين.",
  ],
  "advice.age.heat": [
    "Heat ages capacitors and fans: keep the unit cool and have both checked every few years.",
    "الحرارة تهرم المكثفات والمراوح: أبق الجهاز باردا واطلب فحصها كل بضع سنوات.",
  ],
  "advice.insects.mesh": [
    "Close openings with fine mesh that does not stop the cooling air, and have the inside looked at once a year.",
    "أغلق الفتحات بشبك ناعم لا يمنع هواء التبريد، واطلب فحص الداخل مرة كل سنة.",
  ],
  "advice.impact.fasten": [
    "Fasten the unit so that it cannot shake, and check plugs and screws after every transport.",
    "ثبت الجهاز كي لا يهتز، وافحص القوابس والبراغي بعد كل نقل.",
  ],
  "advice.unknown.tell": [
    "The cause is not known: if it happens again, tell us at once, and what happened just before.",
    "السبب غير معروف: إن تكرر فأخبرنا فورا وبما حدث قبله مباشرة.",
  ],
  "fit.off": [
    "Switch off, unplug or lock off, and make sure that nobody can switch on again.",
    "افصل وانزع القابس أو أقفل القاطع، وتأكد من أن أحدا لا يستطيع إعادة التوصيل.",
  ],
  "fit.measure": [
    "Wait at least 15 minutes, then measure on the highest DC range between bus plus and bus minus: below 10 V. Only then touch.",
    "انتظر 15 دقيقة على الأقل، ثم قس على أعلى مدى للجهد المستمر بين موجب الناقل وسالبه: أقل من \u206810 V\u2069. عندها فقط المس.",
  ],
  "fit.turns": [
    "Do not let the motor or fan turn while it is plugged in: turning, it charges the bus.",
    "لا تدع المحرك أو المروحة تدور وهي موصولة: فبدورانها تشحن الناقل.",
  ],
  "fit.never": [
    "Never plug in or pull out the fan, the motor or any other plug while the unit has power. Switch off, wait, measure, then plug.",
    "لا توصل المروحة أو المحرك أو أي قابس آخر ولا تنزعه أبدا والجهاز تحت الجهد. افصل وانتظر وقس ثم وصل.",
  ],
  "fit.marks": [
    "Go by the marks on the wires and by what was noted or photographed on arrival. Where neither tells, go by the maker's drawing; do not guess.",
    "اتبع علامات الأسلاك وما دون أو صور عند الوصول. وإن لم يدل أيهما فاتبع مخطط الصانع؛ لا تخمن.",
  ],
  "fit.bus": [
    "Bus plus and bus minus are never exchanged: exchanged, the board is destroyed at once.",
    "لا تبدل موجب الناقل وسالبه أبدا: تبديلهما يتلف اللوحة فورا.",
  ],
  "fit.phases": [
    "The motor's phases go back in the order in which they were. If it turns the wrong way: switch off, wait, measure, then exchange two of them.",
    "تعود أطوار المحرك بالترتيب الذي كانت عليه. إن دار بالعكس: افصل وانتظر وقس ثم بدل اثنين منها.",
  ],
  "fit.earth": [
    "The protective earth is connected first and taken off last.",
    "يوصل التأريض الوقائي أولا وينزع أخيرا.",
  ],
  "mount.clean": [
    "Clean both faces until no old paste is left; replace an insulating pad that was squeezed once.",
    "نظف السطحين حتى لا يبقى معجون قديم؛ واستبدل الوسادة العازلة التي ضغطت من قبل.",
  ],
  "mount.film": [
    "A thin even film of paste, no more than fills the grooves; a dry pad takes none.",
    "طبقة رقيقة متساوية من المعجون لا تزيد على ملء الأخاديد؛ والوسادة الجافة لا يوضع عليها شيء.",
  ],
  "mount.screws": [
    "All screws by hand first, crosswise; then the full torque, crosswise.",
    "كل البراغي باليد أولا على التصالب، ثم العزم الكامل على التصالب.",
  ],
  "mount.sheet": [
    "The part's own data sheet wins over this table. A power module, and any case that is not in it, takes the torque of its data sheet.",
    "نشرة بيانات القطعة نفسها مقدمة على هذا الجدول. وحدة القدرة وكل غلاف غير مذكور فيه يأخذان العزم المذكور في نشرة بياناتهما.",
  ],
  "first.check": [
    "Check every plug, every screw and the earth once more; close all covers.",
    "افحص كل قابس وكل برغي والتأريض مرة أخرى؛ وأغلق كل الأغطية.",
  ],
  "first.stand": [
    "Stand clear and switch on at the breaker or isolator.",
    "ابتعد ثم شغل من القاطع أو الفاصل.",
  ],
  "first.watch": [
    "Watch and listen for a few minutes: it must run evenly, without smell, smoke or trip.",
    "راقب واستمع بضع دقائق: يجب أن يعمل بانتظام دون رائحة أو دخان أو فصل.",
  ],
  "first.trip": [
    "If a breaker, a residual-current breaker or a fuse opens, do not switch on again.",
    "إذا فصل قاطع أو قاطع تسرب أو احترق مصهر فلا تشغل من جديد.",
  ],
  "back.board": [
    "The whole board as it is, with its heatsink and all that is screwed to it; no fuse changed.",
    "اللوحة كاملة كما هي مع مشتتها وكل ما ثبت عليه؛ دون تغيير أي مصهر.",
  ],
  "back.motor": [
    "The motor's readings, unplugged and proven dead: U to V, V to W, W to U, and each to earth.",
    "قراءات المحرك وهو مفصول ومثبت خلوه من الجهد: U-V ثم V-W ثم W-U، وكل منها إلى الأرض.",
  ],
  "back.story": [
    "What it did, in order: sounds, smell, display or number of blinks, which fuse or breaker opened.",
    "ما حدث بالترتيب: أصوات، رائحة، الشاشة أو عدد الومضات، وأي مصهر أو قاطع فصل.",
  ],
  "back.wiring": ["Pictures of the wiring as it was connected.", "صور للتوصيلات كما كانت."],
  "back.packed": [
    "Before packing: proven below 10 V, dry, and padded so that nothing bends.",
    "قبل التغليف: مثبت أن جهدها أقل من \u206810 V\u2069، جافة، ومبطنة كي لا ينثني شيء.",
  ],
} as const satisfies Translated<typeof ADVICE, "ar">;
