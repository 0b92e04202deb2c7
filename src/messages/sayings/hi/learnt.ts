import type { Sayings } from "../../said.ts";

export const LEARNT: Sayings = {
  "{0} expected": "{0} अपेक्षित",
  "{0} found": "{0} मिले",
  "{0} found on {1} parts": "{1} पुर्जों पर {0} मिले",
  short: "शॉर्ट",
  drift: "मान बदला",
  "Faults found, against those that {0} in the same jobs; within these ends nine times in ten.":
    "मिली खराबियाँ, उनके मुकाबले जो {0} उन्हीं जॉब में; दस में नौ बार इन सीमाओं के भीतर।",
  "Sorts of parts": "पुर्जों के प्रकार",
  "the tables expect": "तालिकाएँ बताती हैं",
  "After one cause": "एक कारण के बाद",
  "their sort leads to expect": "उनका प्रकार बताता है",
  "In one family of boards": "बोर्डों के एक परिवार में",
  "sort and cause lead to expect": "प्रकार और कारण बताते हैं",
  "Parts of one board": "एक बोर्ड के पुर्जे",
  "their sort leads to expect in that family": "उस परिवार में उनका प्रकार बताता है",
  "How parts fail": "पुर्जे कैसे खराब होते हैं",
  "Shares of the modes, before and now.": "प्रकारों के हिस्से, पहले और अब।",
  "How parts fail in one family": "एक परिवार में पुर्जे कैसे खराब होते हैं",
  "Shares of the modes, everywhere and there.": "प्रकारों के हिस्से, हर जगह और वहाँ।",
  "What one fault brings with it": "एक खराबी साथ में क्या लाती है",
  "Chance that the second follows the first.": "पहली के बाद दूसरी आने की संभावना।",
  "Minutes here": "यहाँ के मिनट",
  "Times the minutes of the job format; the next job is planned with them.":
    "जॉब फॉर्मेट के मिनटों के कितने गुना; अगला जॉब इन्हीं से नियोजित होता है।",
  "On good boards beside those of the jobs; the next job on such a board counts with it.":
    "जॉब के बोर्डों के साथ रखे अच्छे बोर्डों पर; ऐसे बोर्ड का अगला जॉब इसे गिनता है।",
  "Prices paid": "चुकाई गई कीमतें",
  "New parts, in the job's currency.": "नए पुर्जे, जॉब की मुद्रा में।",
  "{0} timed, {1} pauses left out": "{0} का समय लिया, {1} विराम छोड़े",
  "{0}: {1} red {2}, black {3}": "{0}: {1} लाल {2}, काला {3}",
  "{0} bought": "{0} खरीदे",
  "Parts nobody has seen:": "पुर्जे जिन्हें किसी ने नहीं देखा:",
  "Nets that end at one pin:": "एक ही पिन पर खत्म होने वाले नेट:",
  "No net ends at one pin.": "कोई नेट एक ही पिन पर खत्म नहीं होता।",
  "Rails without a source:": "बिना स्रोत की रेल:",
  "Every rail has a source.": "हर रेल का स्रोत है।",
  "Values that nobody sells:": "मान जो कोई नहीं बेचता:",
  "Every value is one that is sold.": "हर मान बिकने वाला है।",
  "{0}: {1}; the nearest is {2}": "{0}: {1}; सबसे पास {2}",
  "Parts whose price can decide whether a repair pays, and has none (taken instead, of a new board):":
    "पुर्जे जिनकी कीमत तय कर सकती है कि मरम्मत फायदे की है, और जिनकी कीमत नहीं दी (उसकी जगह नए बोर्ड का यह हिस्सा लिया):",
  "Every part whose price can decide has one.": "जिन पुर्जों की कीमत निर्णायक है उन सबकी दी है।",
  "Parts that no cold check tells apart as long as nothing is lifted:":
    "पुर्जे जिन्हें कुछ उठाए बिना कोई ठंडी जाँच अलग नहीं करती:",
  "Cold checks tell every shorted or open part that they show from every other.":
    "ठंडी जाँचें जो भी शॉर्ट या खुला पुर्जा दिखाती हैं, उसे बाकी सबसे अलग पहचानती हैं।",
  "{0} faults (shorts and opens) show in no cold check; they need a lift, a look, or power.":
    "{0} खराबियाँ (शॉर्ट और खुले) किसी ठंडी जाँच में नहीं दिखतीं; उनके लिए उठाना, देखना या बिजली चाहिए।",
  "no single lifted pin parts them": "कोई एक पिन उठाने से वे अलग नहीं होते",
  "lift {0}: {1}": "{0} उठाएँ: {1}",
  "decoupling: {0}": "डीकपलिंग: {0}",
  "clamp: {0}": "क्लैंप: {0}",
  "pull-down: {0}": "पुल-डाउन: {0}",
  "through: {0}": "के रास्ते: {0}",
  "gate of {0}: {1}": "{0} का गेट: {1}",
  "rail {0}: {1} to {2}, {3}": "रेल {0}: {1} से {2}, {3}",
  "from {0}": "{0} से",
  "rectifier: {0}": "रेक्टिफायर: {0}",
  "bulk: {0}": "बल्क: {0}",
  "feeds: {0}": "किसे देती है: {0}",
  "bus: none found": "बस: नहीं मिली",
  "bus: {0} to {1} (by its inverter legs)": "बस: {0} से {1} (इन्वर्टर की लेग से)",
  "bus: {0} to {1} (by its largest capacitor)": "बस: {0} से {1} (सबसे बड़े संधारित्र से)",
  "off-line switcher: {0}": "ऑफ-लाइन स्विचर: {0}",
  "off-line switcher: {0} into {1}": "ऑफ-लाइन स्विचर: {0}, {1} में",
  "mains side: {0}": "मेन्स की ओर: {0}",
  "line fuses: {0}": "लाइन फ्यूज: {0}",
  "inrush: {0}": "इनरश: {0}",
  "bridges: {0}": "ब्रिज: {0}",
  "bus capacitors: {0}": "बस संधारित्र: {0}",
  "boost: switch {0}, diode {1}, reactor {2}": "बूस्ट: स्विच {0}, डायोड {1}, रिएक्टर {2}",
  "resonant: switch {0}, coil {1}, capacitor: {2}": "रेजोनेंट: स्विच {0}, कॉइल {1}, संधारित्र: {2}",
  "motor switch {0}: {1}, phase {2}": "मोटर स्विच {0}: {1}, फेज {2}",
  "shunts: {0}": "शंट: {0}",
  "controller {0}: fed by {1}": "कंट्रोलर {0}: {1} से सप्लाई",
  "title: {0}": "शीर्षक: {0}",
  "found: nothing that it came in with": "मिला: ऐसा कुछ नहीं जिसके साथ आया हो",
  "found: {0}": "मिला: {0}",
  "broke when power came on (entry {0}): {1}": "बिजली आने पर खराब हुआ (प्रविष्टि {0}): {1}",
  "entries kept: {0} of {1}; notes, names, reasons, ids and what was undone are left out, times begin on 1 January 2000":
    "रखी प्रविष्टियाँ: {1} में से {0}; नोट, नाम, कारण, पहचान और वापस लिया हुआ छोड़ा, समय 1 जनवरी 2000 से शुरू",
  "terms kept: none": "रखी शर्तें: कोई नहीं",
  "terms kept: {0}": "रखी शर्तें: {0}",
  "proposed way: {0} steps": "सुझाया रास्ता: {0} कदम",
  "the job is still open: close it first": "जॉब अभी खुला है: पहले बंद करें",
  "this job found no fault: nothing was replaced and nothing is likelier faulty than not":
    "इस जॉब में कोई खराबी नहीं मिली: कुछ बदला नहीं गया और किसी के खराब होने की संभावना आधी से अधिक नहीं",
  "the proposed way did not end within {0} steps": "सुझाया रास्ता {0} कदमों में खत्म नहीं हुआ",
  "the practice bench has no answer to {0} without two places":
    "दो जगहों के बिना अभ्यास बेंच के पास {0} का उत्तर नहीं",
  "the practice bench has no answer to {0}": "अभ्यास बेंच के पास {0} का उत्तर नहीं",
  "{0} is a cold mode; unpower the board first": "{0} ठंडा मोड है; पहले बोर्ड की बिजली हटाएँ",
  "no reading: {0}": "कोई माप नहीं: {0}",
  "under power nobody can tell from the board file the {0} of {1}":
    "बिजली चालू रहते बोर्ड की फाइल से {1} का {0} कोई नहीं बता सकता",
  "nothing to learn from: {0}": "सीखने को कुछ नहीं: {0}",
  "a shorted switch shorts its partner at the next gate pulse":
    "शॉर्ट स्विच अगले गेट पल्स पर अपने साथी को शॉर्ट करता है",
  "mostly one leg of a module goes short; it may take another in the same case":
    "अधिकतर मॉड्यूल की एक लेग शॉर्ट होती है; उसी केस की दूसरी को भी ले जा सकती है",
  "a short behind the rectifier opens the line fuse unless a limiter stood in its path":
    "रेक्टिफायर के पीछे का शॉर्ट लाइन फ्यूज खोलता है, जब तक रास्ते में लिमिटर न हो",
  "a varistor that shorts opens the fuse before it": "शॉर्ट होता वैरिस्टर अपने पहले का फ्यूज खोलता है",
  "what shorted the varistor also reached the bridge and the small supply":
    "जिसने वैरिस्टर को शॉर्ट किया वह ब्रिज और छोटी सप्लाई तक भी पहुँचा",
  "fault current takes a bridge junction with it": "खराबी का करंट ब्रिज का एक जंक्शन साथ ले जाता है",
  "a steady short overheats the inrush limiter": "लगातार शॉर्ट इनरश लिमिटर को गर्म कर देता है",
  "the board ran through its inrush limiter": "बोर्ड अपने इनरश लिमिटर के रास्ते चलता रहा",
  "the current of a shorted leg cracks the shunt under it": "शॉर्ट लेग का करंट उसके नीचे के शंट को चटका देता है",
  "a shorted motor shorts a leg": "शॉर्ट मोटर एक लेग को शॉर्ट करती है",
  "ripple of a dry bus capacitor stresses the switches": "सूखे बस संधारित्र का रिपल स्विचों पर दबाव डालता है",
  "a shorted capacitor of a series pair leaves all the voltage to its partner":
    "श्रेणी जोड़ी का शॉर्ट संधारित्र सारा वोल्टेज साथी पर छोड़ता है",
  "a shorted brake switch leaves its resistor across the bus":
    "शॉर्ट ब्रेक स्विच अपना प्रतिरोधक बस के आर-पार छोड़ता है",
  "bus voltage breaks through to the gate: resistor open, clamp shorted":
    "बस का वोल्टेज गेट तक पहुँचता है: प्रतिरोधक खुला, क्लैंप शॉर्ट",
  "a shorted switch has lost its gate too": "शॉर्ट स्विच का गेट भी गया",
  "through the gate into the driver": "गेट के रास्ते ड्राइवर में",
  "a shorted switch inside a module takes the driver beside it":
    "मॉड्यूल के अंदर शॉर्ट स्विच बगल का ड्राइवर ले जाता है",
  "a dead driver leaves a gate half on: its switch shorts":
    "मरा ड्राइवर गेट को आधा चालू छोड़ता है: उसका स्विच शॉर्ट होता है",
  "a dry bootstrap or drive-rail capacitor lets a switch run linear":
    "सूखा बूटस्ट्रैप या ड्राइव-रेल संधारित्र स्विच को लीनियर चलने देता है",
  "15 V or bus voltage reaches the controller pin on the same net":
    "15 V या बस का वोल्टेज उसी नेट पर कंट्रोलर के पिन तक पहुँचता है",
  "a shorted supply switch opens the fuse or fuse resistor before it":
    "सप्लाई का शॉर्ट स्विच अपने पहले का फ्यूज या फ्यूज प्रतिरोधक खोलता है",
  "where no fuse resistor stands before it, the line fuse": "जहाँ पहले फ्यूज प्रतिरोधक न हो, वहाँ लाइन फ्यूज",
  "drain voltage reaches the control side: opto, reference, supply clamp":
    "ड्रेन का वोल्टेज कंट्रोल की ओर पहुँचता है: ऑप्टो, रेफरेंस, सप्लाई क्लैंप",
  "drain voltage reaches the control side: the low resistor that feeds it from its own winding burns":
    "ड्रेन का वोल्टेज कंट्रोल की ओर पहुँचता है: अपनी वाइंडिंग से सप्लाई देने वाला छोटा प्रतिरोधक जलता है",
  "the last gulp of a dying supply switch lifts its rails: their clamps short":
    "मरते सप्लाई स्विच का आखिरी झटका रेल को ऊपर उठाता है: उनके क्लैंप शॉर्ट होते हैं",
  "an opto whose output took the drain passes on to the reference":
    "जिस ऑप्टो के आउटपुट पर ड्रेन आया वह रेफरेंस तक पहुँचाता है",
  "without its clamp the supply switch is over-volted": "क्लैंप के बिना सप्लाई स्विच पर अधिक वोल्टेज आता है",
  "with the feedback open every rail rises: what hangs on it dies":
    "फीडबैक खुलने पर हर रेल बढ़ती है: उस पर लगा सब मरता है",
  "a regulator shorted through over-volts what it feeds":
    "आर-पार शॉर्ट रेगुलेटर जिसे सप्लाई देता है उस पर अधिक वोल्टेज डालता है",
  "dirt from a gate to the bus or a supply turns the switch on":
    "गेट से बस या सप्लाई तक की गंदगी स्विच को चालू करती है",
  "dirt from a module input to another input or a rail drives its switch against its partner":
    "मॉड्यूल के इनपुट से दूसरे इनपुट या रेल तक की गंदगी उसके स्विच को साथी के विरुद्ध चलाती है",
  "dirt that brings a higher rail to a controller pin kills the pin":
    "कंट्रोलर के पिन तक ऊँची रेल लाने वाली गंदगी पिन को मार देती है",
  "with less resonant or bus capacitance the switch sees more volts than it stands":
    "कम रेजोनेंट या बस धारिता पर स्विच सहने से अधिक वोल्ट देखता है",
  "a shorted coil or resonant capacitor puts the bus across the switch at its first pulse":
    "शॉर्ट कॉइल या रेजोनेंट संधारित्र पहले पल्स पर बस को स्विच के आर-पार डालता है",
  "a drifted or open chain from the coil turns the switch on at the wrong moment":
    "कॉइल से आती बदली या खुली कड़ी स्विच को गलत समय पर चालू करती है",
  "a dry capacitor lets the drive rail sag: the switch runs linear":
    "सूखा संधारित्र ड्राइव रेल को गिरने देता है: स्विच लीनियर चलता है",
  "no limiter stands before it: the shorted switch takes bridge junctions":
    "पहले कोई लिमिटर नहीं: शॉर्ट स्विच ब्रिज के जंक्शन ले जाता है",
  "{0} readings": { en: "1 reading", one: "{0} माप", other: "{0} माप" },
};
