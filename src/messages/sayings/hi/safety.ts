import type { Sayings } from "../../said.ts";

export const SAFETY: Sayings = {
  "Unplug it and wait 5 to 15 minutes: what is stored does not need the mains.":
    "प्लग निकालें और 5 से 15 मिनट रुकें: जो जमा है उसे मेन्स की जरूरत नहीं।",
  "Meter and leads marked CAT III, or CAT II at least, for these volts.":
    "इन वोल्टों के लिए CAT III, या कम से कम CAT II अंकित मीटर और लीड।",
  "Highest DC range, one hand, probes on the capacitor's own pins: bleeders and dark LEDs prove nothing.":
    "सबसे ऊँची DC रेंज, एक हाथ, प्रोब संधारित्र की अपनी पिनों पर: ब्लीडर और बुझे LED कुछ साबित नहीं करते।",
  "Discharge through the resistor with insulated clips, never with a screwdriver; the resistor gets hot.":
    "इंसुलेटेड क्लिपों वाले प्रतिरोधक से डिस्चार्ज करें, पेचकस से कभी नहीं; प्रतिरोधक गर्म होता है।",
  "The resistor may still be hot: hold it by its insulated clips.":
    "प्रतिरोधक अब भी गर्म हो सकता है: उसे इंसुलेटेड क्लिपों से पकड़ें।",
  "Switch off, pull the plug, and count the bus as charged until it has been measured again.":
    "बंद करें, प्लग निकालें, और दोबारा मापे जाने तक बस को आवेशित मानें।",
  "The bus can creep back up, a large capacitor to 10 to 50 V: if anything was left a while, measure its volts again before touching.":
    "बस धीरे-धीरे फिर चढ़ सकती है, बड़ा संधारित्र 10 से 50 V तक: कुछ देर छोड़ा गया हो तो छूने से पहले उसके वोल्ट फिर मापें।",
  "A capacitor may hold charge in the hand too: empty it through the resistor before it goes in.":
    "संधारित्र हाथ में भी आवेश रख सकता है: लगाने से पहले उसे प्रतिरोधक से खाली करें।",
  "Do not turn the motor or a fan while it is plugged in: it charges the bus. If it turned, say so.":
    "जुड़े हुए मोटर या पंखे को न घुमाएँ: वह बस को आवेशित करता है। घूमा हो तो बताएँ।",
  "An insulation tester goes on the motor alone: plug out, its leads joined, against its frame. Never on the board.":
    "इंसुलेशन टेस्टर केवल मोटर पर लगता है: प्लग निकला, उसके तार जोड़े हुए, उसके ढाँचे से। बोर्ड पर कभी नहीं।",
  "No insulation tester on a populated board: it kills chips and over-volts capacitors.":
    "पुर्जे लगे बोर्ड पर इंसुलेशन टेस्टर नहीं: वह चिप मार देता है और संधारित्रों पर वोल्ट हद से बढ़ा देता है।",
  "What has been powered counts as charged: prove every capacitor empty once more before it is packed or handed over.":
    "जिसे बिजली मिली वह आवेशित माना जाता है: पैक करने या सौंपने से पहले हर संधारित्र को एक बार फिर खाली साबित करें।",
  "Hot iron and fumes: eye protection and extraction; gloves for burnt resin.":
    "गर्म आयरन और धुआँ: आँखों की सुरक्षा और निकास; जले रेजिन के लिए दस्ताने।",
  "Take a picture first. No power until it is fully dry: hours of warm air, not minutes.":
    "पहले तस्वीर लें। पूरा सूखने तक बिजली नहीं: गर्म हवा घंटों, मिनटों नहीं।",
  "Pads lift, most of all on single-sided boards: add fresh solder, preheat, do not pull.":
    "पैड उखड़ते हैं, सबसे अधिक एक-तरफा बोर्डों पर: नया सोल्डर लगाएँ, पहले गर्म करें, खींचें नहीं।",
  "Fit the same insulation pad and fresh paste as before; then check the tab against the heatsink.":
    "पहले जैसा ही इंसुलेटिंग पैड और नया पेस्ट लगाएँ; फिर टैब को हीटसिंक से जाँचें।",
  "Hands off while it is live: clip meters on before power, cover the board, wear eye protection, parts can burst.":
    "चालू रहते हाथ दूर: बिजली से पहले मीटर क्लिप करें, बोर्ड ढकें, आँखों की सुरक्षा पहनें, पुर्जे फट सकते हैं।",
  "Bus minus is at mains potential, and a heatsink may be.":
    "बस माइनस मेन्स के विभव पर है, और हीटसिंक भी हो सकता है।",
  "The isolation transformer feeds this board alone and passes no earth on; a residual-current breaker (RCD) behind it does nothing.":
    "आइसोलेशन ट्रांसफॉर्मर केवल इस बोर्ड को सप्लाई देता है और अर्थ आगे नहीं जाने देता; उसके पीछे रेसिडुअल करंट ब्रेकर (RCD) कुछ नहीं करता।",
  "Best is an isolation transformer for the board alone. A residual-current breaker (RCD) helps, but it does not see a touch across the bus or from line to neutral.":
    "सबसे अच्छा है केवल बोर्ड के लिए आइसोलेशन ट्रांसफॉर्मर। रेसिडुअल करंट ब्रेकर (RCD) मदद करता है, पर बस के आर-पार या लाइन से न्यूट्रल तक का स्पर्श उसे नहीं दिखता।",
  "No earth clip of the oscilloscope on bus minus, which is a short: isolate the board, never the instrument, or use a differential probe.":
    "ऑसिलोस्कोप का अर्थ क्लिप बस माइनस पर नहीं, वह शॉर्ट है: बोर्ड को आइसोलेट करें, उपकरण को कभी नहीं, या डिफरेंशियल प्रोब लें।",
  "The lamp limits what the mains gives, not the energy stored in the bus capacitors.":
    "लैंप मेन्स से मिलने वाले करंट को सीमित करता है, बस संधारित्रों में जमा ऊर्जा को नहीं।",
  "Check the polarity twice and never exceed the rail's own voltage.":
    "ध्रुवता दो बार जाँचें और रेल के अपने वोल्टेज से कभी ऊपर न जाएँ।",
  "Volts and current limit are set with the output off, then it is clipped on: 0.4 V at most to begin with.":
    "वोल्ट और करंट सीमा आउटपुट बंद रखकर सेट होते हैं, फिर क्लिप होती है: शुरू में अधिक से अधिक 0.4 V।",
  "A shorted ceramic or tantalum that is fed can crack, burst or glow: low volts first, output off at the first smell or smoke.":
    "शॉर्ट सिरेमिक या टैंटलम को सप्लाई दें तो वह चटक, फट या दहक सकता है: पहले कम वोल्ट, पहली गंध या धुएँ पर आउटपुट बंद।",
  "Hands off while it is live: only read the meter that hangs on it.":
    "चालू रहते हाथ दूर: केवल उस पर लगा मीटर पढ़ें।",
  "Local codes and the rules for licensed electrical work come first; where they say otherwise, follow them.":
    "स्थानीय नियम और लाइसेंसधारी बिजली काम के नियम पहले हैं; जहाँ वे कुछ और कहें, उन्हें मानें।",
  "Series lamp {0} (filament or halogen, never LED): it passes at most about {1}, and the board draws about under 1 W at idle.":
    "सीरीज लैंप {0} (फिलामेंट या हैलोजन, LED कभी नहीं): यह अधिक से अधिक लगभग {1} देता है, और बोर्ड खाली में लगभग 1 W से कम लेता है।",
  "Series lamp {0} (filament or halogen, never LED): it passes at most about {1}, and the board draws about {2} at idle.":
    "सीरीज लैंप {0} (फिलामेंट या हैलोजन, LED कभी नहीं): यह अधिक से अधिक लगभग {1} देता है, और बोर्ड खाली में लगभग {2} लेता है।",
  "That is little: slow pulsing may only mean that the lamp is too small.":
    "यह कम है: धीमा टिमटिमाना केवल यह बता सकता है कि लैंप बहुत छोटा है।",
  "This bench lists no series lamp: a 100 W filament lamp in series would save parts if a short is left. Without one, power up only through the right fuse and a breaker you can reach.":
    "इस बेंच पर सीरीज लैंप दर्ज नहीं: शॉर्ट बाकी हो तो सीरीज में 100 W का फिलामेंट लैंप पुर्जे बचाएगा। वह न हो तो केवल सही फ्यूज और पहुँच में रहने वाले ब्रेकर के रास्ते चालू करें।",
  "{0} has not been read": "{0} पढ़ा नहीं गया",
  "{0}: pull its plug, and read its windings and its insulation before it is driven":
    "{0}: उसका प्लग निकालें, और चलाने से पहले उसकी वाइंडिंग और इंसुलेशन पढ़ें",
  "a winding of {0} is open": "{0} की एक वाइंडिंग खुली है",
  "the windings of {0} are not alike ({1} to {2})": "{0} की वाइंडिंग एक जैसी नहीं ({1} से {2})",
  "the insulation of {0} to earth could not be read": "{0} का अर्थ से इंसुलेशन पढ़ा नहीं जा सका",
  "{0} reads under {1} to earth; cold and full a compressor reads low: read it again warm":
    "{0} अर्थ से {1} से कम पढ़ता है; ठंडा और भरा कंप्रेसर कम पढ़ता है: गर्म होने पर फिर पढ़ें",
  "{0} reads under {1} to earth": "{0} अर्थ से {1} से कम पढ़ता है",
  "A hermetic compressor reads over {0}; lower when cold and full: then again warm; the maker's limit goes before it.":
    "हर्मेटिक कंप्रेसर {0} से अधिक पढ़ता है; ठंडा और भरा हो तो कम: तब गर्म होने पर फिर; निर्माता की सीमा इससे ऊपर है।",
  "Common practice is over {0}; the maker's limit goes before it.":
    "आम चलन {0} से अधिक है; निर्माता की सीमा इससे ऊपर है।",
  "{0}, or overrule with a reason (overrule motor WHY)": "{0}, या कारण देकर नकारें (overrule motor WHY)",
  "{0} is still clipped on between {1} and {2}: take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live":
    "{0} अब भी {1} और {2} के बीच क्लिप है: चालू करने से पहले हटाएँ (unclip), या कारण देकर नकारें; छोड़ने पर जलता है, और चालू में ही हाथ उस तक जाता है",
  "{0} is still clipped on between {1} and {2} (and {3} more): take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live":
    "{0} अब भी {1} और {2} के बीच क्लिप है (और {3} और): चालू करने से पहले हटाएँ (unclip), या कारण देकर नकारें; छोड़ने पर जलता है, और चालू में ही हाथ उस तक जाता है",
};
