import type { Sayings } from "../../said.ts";

export const MONEY: Sayings = {
  "It runs: nothing more is expected but handing it back.": "تعمل: لم يبق إلا إعادتها.",
  "Stop here. {0}": "توقف هنا. {0}",
  "More is still expected than it would earn: only what is cheap is worth trying, then stop.":
    "المتوقع إنفاقه أكثر مما ستكسبه: لا يستحق التجربة إلا ما هو رخيص، ثم توقف.",
  "Go on while less than {0} is still expected; now it is {1}.":
    "تابع ما دام المتوقع أقل من {0}؛ وهو الآن {1}.",
  "Work and parts stand at {0}, above the {1} that was accepted: ask the customer again, or bear the rest.":
    "بلغ العمل والقطع {0}، فوق {1} المقبول: اسأل الزبون من جديد، أو تحمل الباقي.",
  "It may come to {0}, above the {1} that was accepted: ask the customer again before more is fitted.":
    "قد يصل إلى {0}، فوق {1} المقبول: اسأل الزبون من جديد قبل تركيب المزيد.",
  "diagnosis fee": "أجرة الفحص",
  "as the terms have it": "بحسب الشروط",
  "the terms name none": "لا تذكر الشروط أجرة",
  "{0} was pulled already and counts as pulled": "{0}: كانت مستعملة وتحسب مستعملة",
  "{0} was new and counts as pulled": "{0}: كانت جديدة وتحسب مستعملة",
  "{0} is programmed and sold by nobody: a donor for the next such board":
    "{0} مبرمج ولا يبيعه أحد: يصلح قطعة مانحة للوحة القادمة من نوعها",
  carcass: "هيكل اللوحة",
  "for its parts, where the customer leaves it": "لقطعها، إن تركها الزبون",
  "{0}; in exchange the board goes whole": "{0}؛ وفي المبادلة تذهب اللوحة كاملة",
  "exchange board": "لوحة مبادلة",
  "keeping the board fetches more": "الاحتفاظ باللوحة يجلب أكثر",
  "given for this board, whole and with its controller": "ما يعطى مقابل هذه اللوحة كاملة مع متحكمها",
  "{0}, good in {1} of {2}": "{0}، سليمة في {1} من {2}",
  "{0}, less {1} of taking it off": "{0}، ناقص {1} لنزعها",
  "{0}: it stays on": "{0}: تبقى في مكانها",
  "a new board, and the diagnosis fee": "لوحة جديدة، وأجرة الفحص",
  "the board goes back as it is, for the diagnosis fee": "تعود اللوحة كما هي، مقابل أجرة الفحص",
  "the price that is agreed": "السعر المتفق عليه",
  "the least at which the job is expected to pay, what was spent on it included":
    "أقل ما يتوقع أن يربح به العمل، شاملا ما صرف عليه",
  "the shop's usual price": "السعر المعتاد للورشة",
  "The board runs: what it took is spent.": "اللوحة تعمل: ما لزم لإصلاحها قد صرف.",
  "Going on is worth less than stopping.": "المتابعة أقل فائدة من التوقف.",
  "At the price agreed the job is not expected to leave the shop's minimum margin of {0}.":
    "بالسعر المتفق عليه لا يتوقع أن يترك العمل أدنى هامش للورشة، {0}.",
  "The repair would cost more than half of a new board, and it may fail: most customers take the new one.":
    "كلفة الإصلاح تزيد على نصف ثمن لوحة جديدة وقد لا ينجح: معظم الزبائن يأخذون الجديدة.",
  "Repaired in {0} of {1} such jobs.": "تصلح في {0} من {1} من هذه الأعمال.",
  "Work at the bench": "العمل على الطاولة",
  "Not charged": "غير محسوب",
  "Diagnosis fee": "أجرة الفحص",
  "New board": "لوحة جديدة",
  "Not above what was agreed": "لا يزيد عن المتفق عليه",
  "To the price agreed": "تكملة إلى السعر المتفق عليه",
  "Comeback of the shop's own repair: nothing is charged.": "عودة إصلاح سابق لنا: لا يحسب شيء.",
  "A new board in the place of this one, as quoted, and the diagnosis fee.":
    "لوحة جديدة بدلا من هذه كما في عرض السعر، وأجرة الفحص.",
  "Not repaired: the diagnosis fee alone. Parts fitted go back to the shop.":
    "لم تصلح: أجرة الفحص فقط. القطع المركبة تعود إلى الورشة.",
  "By work and parts: no price was agreed.": "بحسب العمل والقطع: لم يتفق على سعر.",
  "By work and parts, within what was agreed.": "بحسب العمل والقطع، ضمن المتفق عليه.",
  "Not above what was agreed without asking again.": "لا يزيد عن المتفق عليه دون سؤال جديد.",
  "The price agreed for the repaired board.": "السعر المتفق عليه للوحة المصلحة.",
  "The job is open; this is the bill if it were repaired as it stands. {0}":
    "العمل ما زال مفتوحا؛ هذه هي الفاتورة لو أصلحت كما هي الآن. {0}",
  "{0}, pulled": "{0}، قطعة مستعملة",
};
