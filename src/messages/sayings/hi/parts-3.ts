import type { Sayings } from "../../said.ts";

export const PARTS_3: Sayings = {
  "What answers at {0} is no SCPI instrument.": "{0} पर जो जवाब देता है वह SCPI उपकरण नहीं है।",
  "{0} answers no figures; connecting again.": "{0} कोई आँकड़ा नहीं देता; फिर से जोड़ा जा रहा है।",
  "The meter's last answer was no figure; asking again.":
    "मीटर का पिछला जवाब कोई आँकड़ा नहीं था; फिर पूछा जा रहा है।",
  "{0} does not answer for its errors.": "{0} अपनी त्रुटियों के बारे में जवाब नहीं देता।",
  "The meter has no {0} (it says: {1} {2}). Type this one.":
    "मीटर में {0} नहीं है (वह कहता है: {1} {2})। इसे हाथ से लिखें।",
  "a function that it does not name": "कोई फ़ंक्शन जिसका वह नाम नहीं बताता",
  "{0} sends no lines: is it a SCPI instrument?": "{0} कोई लाइन नहीं भेजता: क्या यह SCPI उपकरण है?",
  "No meter at {0} ({1}): is it on, is the address right?":
    "{0} पर कोई मीटर नहीं ({1}): क्या वह चालू है, क्या पता सही है?",
  "The wire to {0} was cut.": "{0} का तार कट गया।",
  "Nothing answers at {0}.": "{0} पर कोई जवाब नहीं देता।",
  "The meter did not answer {0} within {1} s; connecting again.":
    "मीटर ने {1} s में {0} का जवाब नहीं दिया; फिर से जोड़ा जा रहा है।",
  "{0} is not installed: on Debian, apt-get install sigrok-cli":
    "{0} इंस्टॉल नहीं है: Debian पर, apt-get install sigrok-cli",
  "{0} ended ({1})": "{0} बंद हो गया ({1})",
  "{0}. Is the meter on, its wire plugged in, and its sending switched on?":
    "{0}। क्या मीटर चालू है, उसका तार लगा है और भेजना चालू है?",
  "{0} lists no drivers": "{0} कोई ड्राइवर नहीं बताता",
  "{0}. Turn it off on the meter.": "{0}। इसे मीटर पर बंद करें।",
  "A negative figure here means that charge is left: discharge, wait, and measure again.":
    "यहाँ ऋणात्मक आँकड़े का मतलब है कि आवेश बचा है: डिस्चार्ज करें, रुकें और फिर मापें।",
  "Not at rest yet.": "अभी स्थिर नहीं हुआ।",
  "Still climbing: this is the figure two seconds after touching.":
    "अभी बढ़ रहा है: यह छूने के दो सेकंड बाद का आँकड़ा है।",
  "Free leads read this too: see that both probes make contact.":
    "खुली लीड भी यही दिखाती हैं: देखें कि दोनों प्रोब ठीक से छू रहे हैं।",
  "The meter is set to {0}. Turn it to {1}: nothing is taken from it until then.":
    "मीटर {0} पर है। इसे {1} पर करें: तब तक उससे कुछ नहीं लिया जाता।",
  "{0} is no address; write the meter's name or number, as 192.168.1.20 or bench-meter:5025":
    "{0} कोई पता नहीं है; मीटर का नाम या नंबर लिखें, जैसे 192.168.1.20 या bench-meter:5025",
  "{0} is no driver; write one of the list, where needed with its wire, as scpi-dmm:conn=/dev/ttyUSB0":
    "{0} कोई ड्राइवर नहीं है; सूची में से एक लिखें, ज़रूरत हो तो उसके तार के साथ, जैसे scpi-dmm:conn=/dev/ttyUSB0",
  "{0} is no channel; P1 is one": "{0} कोई चैनल नहीं है; P1 है",
  "{0} is no meter; write scpi:HOST:PORT or sigrok:DRIVER":
    "{0} कोई मीटर नहीं है; scpi:HOST:PORT या sigrok:DRIVER लिखें",
  'meter: kind must be "none", "scpi" or "sigrok"': 'meter: kind "none", "scpi" या "sigrok" होना चाहिए',
  "what good ones read": "अच्छे बोर्ड क्या पढ़ते हैं",
  nothing: "कुछ नहीं",
  "{0} {1} -> {2}": "{0} {1} -> {2}",
  "new parts: {0}": "नए पुर्जे: {0}",
  "parts that go: {0}": "जाने वाले पुर्जे: {0}",
  "of the board itself: {0}": "बोर्ड का अपना: {0}",
  "nothing: it is the same board": "कुछ नहीं: वही बोर्ड है",
  deleted: "हटाया गया",
  "expected {0}; a board file is brought as it is": "{0} चाहिए था; बोर्ड फ़ाइल जैसी है वैसी लाई जाती है",
  "a packed board": "पैक किया बोर्ड",
  "a shop's word is made of letters, digits, _ + and -": "दुकान का शब्द अक्षरों, अंकों, _ + और - से बनता है",
  "counts of jobs": "जॉब की गिनती",
  "counts of {0}": "{0} की गिनती",
  "expected a whole number": "पूर्ण संख्या चाहिए थी",
  pictures: "तस्वीरें",
  "at most one picture a side": "हर तरफ की ज़्यादा से ज़्यादा एक तस्वीर",
  "a picture": "एक तस्वीर",
  "expected 0, 90, 180 or 270 degrees": "0, 90, 180 या 270 डिग्री चाहिए था",
  "expected a picture of at most 5 MB in base64": "base64 में ज़्यादा से ज़्यादा 5 MB की तस्वीर चाहिए थी",
  "a pinned place": "चिह्नित जगह",
  "this board has no such net or pin": "इस बोर्ड में ऐसा नेट या पिन नहीं है",
  "with {0} pictures of the board, {1} places pinned": {
    en: "with a picture of the board, {1} places pinned",
    one: "बोर्ड की एक तस्वीर के साथ, {1} जगहें चिह्नित",
    other: "बोर्ड की {0} तस्वीरों के साथ, {1} जगहें चिह्नित",
  },
  'event "{0}" is in the log already with other content; give the new one an id of its own':
    'घटना "{0}" लॉग में पहले से अलग सामग्री के साथ है; नई को अपनी अलग id दें',
  'another job has the id "{0}"; give the new one an id of its own':
    'दूसरी जॉब की id "{0}" है; नई को अपनी अलग id दें',
  'another picture of this job has the id "{0}"': 'इस जॉब की दूसरी तस्वीर की id "{0}" है',
  'another picture of a board has the id "{0}"': 'बोर्ड की दूसरी तस्वीर की id "{0}" है',
  'another version of this board\'s pictures has the id "{0}"': 'इस बोर्ड की तस्वीरों के दूसरे संस्करण की id "{0}" है',
  'another version of this board has the id "{0}"': 'इस बोर्ड के दूसरे संस्करण की id "{0}" है',
  "no JSON behind the name": "नाम के बाद JSON नहीं है",
  "a command, not a part": "आदेश है, पुर्जा नहीं",
  "{0} is no {1}: map or remove {2}": "{0} कोई {1} नहीं है: {2} का मेल बताएँ या हटाएँ",
  "no number behind the two nets of {0}": "{0} के दो नेट के बाद कोई संख्या नहीं है",
  "nobody says which pins {0} has: map it": "कोई नहीं बताता कि {0} में कौन से पिन हैं: मेल बताएँ",
  "{0} has {1} pins, {2} {3} nets": "{0} में {1} पिन हैं, {2} में {3} नेट",
  "no part of a board is written with {0}": "बोर्ड का कोई पुर्जा {0} से नहीं लिखा जाता",
  "no .model says what {0} is: map its model": "कोई .model नहीं बताता कि {0} क्या है: उसके मॉडल का मेल बताएँ",
  "no parts in it; export it as a KiCad netlist (.net)":
    "इसमें कोई पुर्जा नहीं; KiCad नेटलिस्ट (.net) के रूप में निर्यात करें",
  "a sheet inside this one is not read: export the whole as a netlist and read that":
    "इस शीट के भीतर की शीट नहीं पढ़ी जाती: पूरे को नेटलिस्ट में निर्यात करें और उसे पढ़ें",
  "a bus is not followed: label the wires, or export a netlist and read that":
    "बस का पीछा नहीं किया जाता: तारों पर लेबल लगाएँ, या नेटलिस्ट निर्यात करें और उसे पढ़ें",
  "an entry to a bus is not followed: label the wires, or export a netlist and read that":
    "बस की एंट्री का पीछा नहीं किया जाता: तारों पर लेबल लगाएँ, या नेटलिस्ट निर्यात करें और उसे पढ़ें",
  "no schematic; it begins with (kicad_sch where it is one": "स्कीमैटिक नहीं है; होता तो (kicad_sch से शुरू होता",
  "no parts in it": "इसमें कोई पुर्जा नहीं",
  "line {0}: brackets nest too deep": "लाइन {0}: कोष्ठक बहुत गहरे हैं",
  "line {0}: a bracket closes that was not opened": "लाइन {0}: कोष्ठक बंद होता है जो खुला नहीं था",
  "line {0}: expected ( at the beginning": "लाइन {0}: शुरू में ( चाहिए था",
  "nothing in it": "इसमें कुछ नहीं है",
  "line {0}: this bracket is not closed": "लाइन {0}: यह कोष्ठक बंद नहीं होता",
  "nothing says so: taken as NPN": "कुछ नहीं बताता: NPN माना गया",
  "nothing says so: taken as N-channel": "कुछ नहीं बताता: N-चैनल माना गया",
  "is no reference (letters, digits, _ + - only): annotate the schematic":
    "रेफरेंस नहीं है (केवल अक्षर, अंक, _ + -): स्कीमैटिक में नंबर डालें",
  "stands twice": "दो बार है",
  "left out, as the mapping says": "मेल के कहे अनुसार छोड़ा गया",
  "drawn as not fitted": "न लगा हुआ दिखाया गया",
  "nobody says what a {0} is: map it": "कोई नहीं बताता कि {0} क्या है: मेल बताएँ",
  "its pin {0} on {1} is left out: map it": "इसका पिन {0}, {1} पर, छोड़ा गया: मेल बताएँ",
  "its pin {0} is a second {1}, on {2} and not on {3}: map its pins":
    "इसका पिन {0} दूसरा {1} है, {2} पर, {3} पर नहीं: पिनों का मेल बताएँ",
  "its type {0} has no place in a board file": "इसके प्रकार {0} के लिए बोर्ड फ़ाइल में जगह नहीं है",
  "its value {0} is not read: the kind's usual counts":
    "इसका मान {0} पढ़ा नहीं गया: इस किस्म का सामान्य मान लिया गया",
  "{0} of its value is not read": "इसके मान का {0} पढ़ा नहीं गया",
  "{0} is no kind of part: map it": "{0} पुर्जे की कोई किस्म नहीं है: मेल बताएँ",
  "{0} has no pin {1}: map its pins": "{0} में पिन {1} नहीं है: पिनों का मेल बताएँ",
  "its pin {0} is on no net": "इसका पिन {0} किसी नेट पर नहीं है",
  "{0} (left out: {1} lines, first line {2}: {3})": "{0} (छोड़ी गईं: {1} लाइनें, पहली लाइन {2}: {3})",
  "the file does not say what the board runs on: give the supply, such as ac,230,50,L,N":
    "फ़ाइल नहीं बताती कि बोर्ड किस पर चलता है: सप्लाई बताएँ, जैसे ac,230,50,L,N",
  seen: "देखा गया",
  "seen-2nd": "दूसरे के हवाले से देखा गया",
  "common practice": "आम चलन",
  "from memory": "याद से",
  "DC amps": "DC एम्पियर",
  "AC amps": "AC एम्पियर",
  "ohms by four wires": "चार तारों से ओम",
  period: "आवर्तकाल",
  "HOLD is on: the figure stands still whatever the probes touch":
    "HOLD चालू है: प्रोब कुछ भी छुएँ, आँकड़ा रुका रहता है",
  "REL is on: the figure is a difference": "REL चालू है: आँकड़ा एक अंतर है",
  "MAX is on: the figure is the largest so far": "MAX चालू है: आँकड़ा अब तक का सबसे बड़ा है",
  "MIN is on: the figure is the smallest so far": "MIN चालू है: आँकड़ा अब तक का सबसे छोटा है",
  "AVG is on: the figure is a mean": "AVG चालू है: आँकड़ा औसत है",
  "a figure without a unit": "बिना इकाई का आँकड़ा",
  "AC and DC volts together": "AC और DC वोल्ट साथ-साथ",
};
