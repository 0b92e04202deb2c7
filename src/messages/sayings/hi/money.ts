import type { Sayings } from "../../said.ts";

export const MONEY: Sayings = {
  "It runs: nothing more is expected but handing it back.": "चल रहा है: लौटाने के सिवा और कुछ बाकी नहीं।",
  "Stop here. {0}": "यहीं रुकें। {0}",
  "More is still expected than it would earn: only what is cheap is worth trying, then stop.":
    "जितनी कमाई होगी उससे अधिक खर्च अभी बाकी है: केवल सस्ता उपाय आजमाएँ, फिर रुकें।",
  "Go on while less than {0} is still expected; now it is {1}.":
    "जब तक बाकी खर्च {0} से कम हो, जारी रखें; अभी {1} है।",
  "Work and parts stand at {0}, above the {1} that was accepted: ask the customer again, or bear the rest.":
    "काम और पुर्जे {0} तक पहुँचे हैं, स्वीकृत {1} से अधिक: ग्राहक से फिर पूछें, या बाकी खुद उठाएँ।",
  "It may come to {0}, above the {1} that was accepted: ask the customer again before more is fitted.":
    "यह {0} तक जा सकता है, स्वीकृत {1} से अधिक: और पुर्जे लगाने से पहले ग्राहक से फिर पूछें।",
  "diagnosis fee": "जाँच शुल्क",
  "as the terms have it": "शर्तों के अनुसार",
  "the terms name none": "शर्तों में कोई नहीं",
  "{0} was pulled already and counts as pulled": "{0} पहले से पुराना था और पुराना ही गिना जाता है",
  "{0} was new and counts as pulled": "{0} नया था और पुराना गिना जाता है",
  "{0} is programmed and sold by nobody: a donor for the next such board":
    "{0} प्रोग्राम किया हुआ है और कोई नहीं बेचता: अगले ऐसे बोर्ड के लिए दाता",
  carcass: "बचा हुआ बोर्ड",
  "for its parts, where the customer leaves it": "पुर्जों के लिए, यदि ग्राहक छोड़ जाए",
  "{0}; in exchange the board goes whole": "{0}; बदले में बोर्ड पूरा जाता है",
  "exchange board": "बदले का बोर्ड",
  "keeping the board fetches more": "बोर्ड रखने से अधिक मिलता है",
  "given for this board, whole and with its controller": "इस बोर्ड के बदले, पूरा और कंट्रोलर सहित",
  "{0}, good in {1} of {2}": "{0}, {2} में से {1} बार अच्छा",
  "{0}, less {1} of taking it off": "{0}, उतारने के {1} घटाकर",
  "{0}: it stays on": "{0}: लगा रहता है",
  "a new board, and the diagnosis fee": "नया बोर्ड, और जाँच शुल्क",
  "the board goes back as it is, for the diagnosis fee": "बोर्ड जैसा है वैसा लौटता है, जाँच शुल्क पर",
  "the price that is agreed": "तय कीमत",
  "the least at which the job is expected to pay, what was spent on it included":
    "सबसे कम कीमत जिस पर जॉब फायदे का लगता है, खर्च हुआ मिलाकर",
  "the shop's usual price": "दुकान की सामान्य कीमत",
  "The board runs: what it took is spent.": "बोर्ड चल रहा है: जो लगना था वह लग चुका है।",
  "Going on is worth less than stopping.": "आगे बढ़ना रुकने से कम फायदे का है।",
  "At the price agreed the job is not expected to leave the shop's minimum margin of {0}.":
    "तय कीमत पर जॉब से दुकान का न्यूनतम मार्जिन {0} बचने की आशा नहीं।",
  "The repair would cost more than half of a new board, and it may fail: most customers take the new one.":
    "मरम्मत नए बोर्ड की आधी कीमत से अधिक होगी और असफल भी हो सकती है: अधिकतर ग्राहक नया लेते हैं।",
  "Repaired in {0} of {1} such jobs.": "ऐसे {1} में से {0} जॉब में मरम्मत हुई।",
  "Work at the bench": "बेंच पर काम",
  "Not charged": "शुल्क नहीं लिया गया",
  "Diagnosis fee": "जाँच शुल्क",
  "New board": "नया बोर्ड",
  "Not above what was agreed": "तय राशि से अधिक नहीं",
  "To the price agreed": "तय कीमत तक",
  "Comeback of the shop's own repair: nothing is charged.": "अपनी ही मरम्मत वापस आई: कोई शुल्क नहीं।",
  "A new board in the place of this one, as quoted, and the diagnosis fee.":
    "कोटेशन के अनुसार इसकी जगह नया बोर्ड, और जाँच शुल्क।",
  "Not repaired: the diagnosis fee alone. Parts fitted go back to the shop.":
    "मरम्मत नहीं हुई: केवल जाँच शुल्क। लगाए गए पुर्जे दुकान में लौटते हैं।",
  "By work and parts: no price was agreed.": "काम और पुर्जों के अनुसार: कोई कीमत तय नहीं थी।",
  "By work and parts, within what was agreed.": "काम और पुर्जों के अनुसार, तय सीमा के भीतर।",
  "Not above what was agreed without asking again.": "दोबारा पूछे बिना तय राशि से अधिक नहीं।",
  "The price agreed for the repaired board.": "ठीक किए गए बोर्ड की तय कीमत।",
  "The job is open; this is the bill if it were repaired as it stands. {0}":
    "जॉब अभी खुला है; यदि मरम्मत यहीं पूरी हो तो बिल यह होगा। {0}",
  "{0}, pulled": "{0}, पुराना पुर्जा",
};
