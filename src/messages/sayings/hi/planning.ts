import type { Sayings } from "../../said.ts";

export const PLANNING: Sayings = {
  "lowest at none of them in particular": "किसी खास पर सबसे कम नहीं",
  "lowest at {0}": "{0} पर सबसे कम",
  "next to no amps, nothing warm": "करंट लगभग नहीं, कुछ गर्म नहीं",
  "none of the parts warm": "कोई पुर्जा गर्म नहीं",
  "{0} warmest": "{0} सबसे गर्म",
  "{0}, none of the parts warm": "{0}, कोई पुर्जा गर्म नहीं",
  "{0}, {1} warmest": "{0}, {1} सबसे गर्म",
  beep: "बीप",
  silent: "कोई बीप नहीं",
  zero: "लगभग शून्य",
  junction: "जंक्शन",
  high: "ऊँचा",
  "no answer": "कोई उत्तर नहीं",
  "It runs. Before it is handed back: {0} is left that something weak is still in it, and a board that comes back costs more than this look.":
    "चलता है। लौटाने से पहले: {0} संभावना बाकी है कि इसमें अब भी कुछ कमजोर है, और लौटकर आने वाला बोर्ड इस जाँच से महँगा पड़ता है।",
  "high at every part": "हर पुर्जे पर ऊँचा",
  "Milliohms along the {0} rail fall towards its short: take them at the pins of each part, the lowest is the short.":
    "{0} रेल पर मिलीओम शॉर्ट की ओर घटते हैं: हर पुर्जे की पिनों पर मापें, जहाँ सबसे कम वहीं शॉर्ट।",
  "no price is agreed yet: counted with the shop's usual {0}":
    "अभी कोई कीमत तय नहीं: दुकान की आम कीमत {0} से गिना गया",
  "{0} is dead and cannot be bought: everything fitted before is wasted":
    "{0} मर चुका है और खरीदा नहीं जा सकता: पहले लगाया सब बेकार",
  "{0} is good and something else is the fault": "{0} ठीक है और खराबी कहीं और है",
  "there is {0} too, which would take the new {1} with it": "{0} भी है, जो नए {1} को भी ले जाएगा",
  "{0} is faulty too and would take the new {1} with it": "{0} भी खराब है और नए {1} को भी ले जाएगा",
  "Contact {0} of {1} goes back on before anything is powered.":
    "कुछ भी चालू करने से पहले {1} का संपर्क {0} वापस लगता है।",
  "Pin {0} of {1} goes back on its pad before anything is powered.":
    "कुछ भी चालू करने से पहले {1} की पिन {0} अपने पैड पर वापस लगती है।",
  "{0} reads good and goes back before anything is powered.":
    "{0} ठीक पढ़ता है और कुछ भी चालू करने से पहले वापस लगता है।",
  "{0} is off the board and not to be trusted: a new one goes in.":
    "{0} बोर्ड से उतरा है और भरोसे लायक नहीं: नया लगता है।",
  "The joints of {0} are new: read it again before it is replaced after all.":
    "{0} के जोड़ नए हैं: बदलने से पहले इसे फिर पढ़ें।",
  "lower than before it went in and than the board explains: something lies across it, or it took harm":
    "लगाने से पहले से और बोर्ड जितना समझाए उससे भी कम: इसके आर-पार कुछ है, या इसे नुकसान हुआ",
  "higher than before it went in, which nothing across it can do: a joint is poor, or it is another part":
    "लगाने से पहले से ऊँचा, जो इसके आर-पार की कोई चीज नहीं कर सकती: जोड़ कच्चा है, या यह दूसरा पुर्जा है",
  "a short where there was none before it went in: a bridge of solder, or it died in fitting":
    "शॉर्ट, जो लगाने से पहले नहीं था: सोल्डर का पुल, या लगाते समय मर गया",
  "{0} reads {1}. Take this one again before power, on clean metal.":
    "{0} पढ़ता है: {1}। चालू करने से पहले यह माप साफ धातु पर फिर लें।",
  "ON THE BOARD": "बोर्ड पर",
  "ON THE PART IN YOUR HAND": "हाथ में लिए पुर्जे पर",
  "For a ceramic speak an edge, a screw or a connector close by, and ohms that jump under light pressure; for a chip, other pins of it that read low too.":
    "सिरेमिक की ओर इशारा: पास में किनारा, पेंच या कनेक्टर, और हल्के दबाव से उछलते ओम; चिप की ओर: उसकी दूसरी पिनें भी कम पढ़ती हैं।",
  "A ceramic is hot at one end, a chip in the middle of its package.":
    "सिरेमिक एक सिरे पर गर्म होता है, चिप अपने पैकेज के बीच में।",
  anything: "कुछ भी",
  "anything else": "कुछ और",
  "It ran after the repair, under load as well, and nothing has been changed since. Write it up and hand it back. What is left unproven: {0} that something weak is still in it.":
    "मरम्मत के बाद चला, लोड पर भी, और तब से कुछ नहीं बदला। लिख लें और लौटा दें। जो साबित नहीं: {0} कि इसमें अब भी कुछ कमजोर है।",
  "It ran after the repair and nothing has been changed since. Load it until it is warm through (20 to 30 minutes), then write it up and hand it back. What is left unproven: {0} that something weak is still in it.":
    "मरम्मत के बाद चला और तब से कुछ नहीं बदला। पूरा गर्म होने तक लोड दें (20 से 30 मिनट), फिर लिख लें और लौटा दें। जो साबित नहीं: {0} कि इसमें अब भी कुछ कमजोर है।",
  "It ran as it came, under load as well, with nothing replaced: no fault found on this board; look at what it is connected to. What is left unproven: {0} that something weak is still in it.":
    "जैसा आया वैसा ही चला, लोड पर भी, कुछ बदले बिना: इस बोर्ड में कोई खराबी नहीं मिली; देखें यह किससे जुड़ा है। जो साबित नहीं: {0} कि इसमें अब भी कुछ कमजोर है।",
  "It ran as it came, with nothing replaced: no fault found on this board; look at what it is connected to. What is left unproven: {0} that something weak is still in it.":
    "जैसा आया वैसा ही चला, कुछ बदले बिना: इस बोर्ड में कोई खराबी नहीं मिली; देखें यह किससे जुड़ा है। जो साबित नहीं: {0} कि इसमें अब भी कुछ कमजोर है।",
  "across {0}, because what was fitted or soldered may be bad, in wrong, or bridged":
    "{0} के आर-पार, क्योंकि जो लगाया या सोल्डर किया वह खराब, उल्टा या पुल बना हो सकता है",
  "held against what was read before it went in": "लगाने से पहले जो पढ़ा था उससे मिलाकर",
  "the bus both ways, because {0} hangs on it": "बस दोनों दिशाओं में, क्योंकि {0} उससे जुड़ा है",
  "the {0} rail both ways, because {1} hangs on it": "{0} रेल दोनों दिशाओं में, क्योंकि {1} उससे जुड़ा है",
  "Cold re-check before power: {0}. A second short behind the first is common.":
    "चालू करने से पहले ठंडी जाँच फिर: {0}। पहले शॉर्ट के पीछे दूसरा शॉर्ट आम है।",
  "Screwed down: each lead of {0} to the heatsink in the highest ohms range, OL; less is a missing pad, a burr or a bridge of paste.":
    "कसने के बाद: {0} का हर लीड हीटसिंक से, ओम की सबसे ऊँची रेंज में, OL; कम हो तो पैड नहीं लगा, धातु का काँटा है या पेस्ट का पुल।",
  "{0} is new and reads as if it were bad ({1}). Measure it by itself before another is fitted: either it came bad, or the board is not as drawn.":
    "{0} नया है और खराब जैसा पढ़ता है ({1})। दूसरा लगाने से पहले इसे अलग से मापें: या तो यह खराब आया, या बोर्ड चित्र जैसा नहीं है।",
  "There may be {0} ({1}): clean and dry the place before anything else there is judged.":
    "{0} हो सकता है ({1}): वहाँ कुछ और परखने से पहले जगह साफ करें और सुखाएँ।",
  "The readings say that {0} is open ({1}). A cracked joint reads the same, and solder costs no part: make its joints anew, then read it again.":
    "माप कहते हैं कि {0} खुला है ({1})। टूटा जोड़ भी वैसा ही पढ़ता है, और सोल्डर में पुर्जा नहीं लगता: इसके जोड़ नए करें, फिर पढ़ें।",
  "{0} ({1}) would condemn the board, since it cannot be bought: it is measured by itself before the board is written off.":
    "{0} ({1}) के कारण बोर्ड बेकार ठहरेगा, क्योंकि यह खरीदा नहीं जा सकता: बोर्ड छोड़ने से पहले इसे अलग से मापा जाता है।",
  "No fault that the program knows explains these readings, taken again where they could be: the board may not be as drawn. It stops here; who goes on, goes by hand.":
    "प्रोग्राम की जानी कोई खराबी इन मापों को नहीं समझाती, जहाँ हो सका वहाँ दोबारा लिए गए: बोर्ड शायद चित्र जैसा नहीं है। यह यहीं रुकता है; आगे जो बढ़े, अपने हाथ से।",
  "No fault that the program knows explains these readings together. Take this one again, with both probes on clean metal, before anything is concluded.":
    "प्रोग्राम की जानी कोई खराबी इन मापों को एक साथ नहीं समझाती। कुछ तय करने से पहले यह माप दोनों प्रोब साफ धातु पर रखकर फिर लें।",
  "The best repair from here: {0}, {1} that it is enough.": "यहाँ से सबसे अच्छी मरम्मत: {0}, {1} कि इतना काफी है।",
  "tells little": "कम बताता है",
  "{0}, rather than {1}": "{0}, न कि {1}",
  "as on a good board": "ठीक बोर्ड जैसा",
  "clears {0}": "{0} को बरी करता है",
  "less likely: {0}": "कम संभव: {0}",
  "{0} ({1})": "{0} ({1})",
  "{0} ({1} each)": "{0} (हर एक {1})",
  "{0} or {1}": "{0} या {1}",
  "under 1 %": "1 % से कम",
  "over 99 %": "99 % से अधिक",
  "burnt, cracked, bulged or corroded": "जला, दरार वाला, फूला या जंग लगा",
  "{0} by itself reads faulty": "{0} अलग से खराब पढ़ता है",
  "{0} by itself reads good": "{0} अलग से ठीक पढ़ता है",
  "Off the board the meter sees {0} alone.": "बोर्ड से उतारने पर मीटर केवल {0} को देखता है।",
  "With pin {0} of {1} free the meter sees {2} alone.": "{1} की पिन {0} खुली हो तो मीटर केवल {2} को देखता है।",
  "none of them gets warm": "कोई गर्म नहीं होता",
  "Feed the {0} rail with {1}, limit {2}: healthy silicon stays off, all current flows in the short.":
    "{0} रेल को {1} दें, सीमा {2}: ठीक सिलिकॉन बंद रहता है, सारा करंट शॉर्ट में बहता है।",
  "Feed the {0} rail with a {1} rechargeable cell through {2}.":
    "{0} रेल को {1} के रिचार्जेबल सेल से {2} के रास्ते दें।",
  "Of the parts across the rail the warmest is the short; what feeds it in series runs hotter and does not count. Below 0.05 ohm it stays cold.":
    "रेल के आर-पार के पुर्जों में सबसे गर्म शॉर्ट है; जो उसे सीरीज में करंट देता है वह ज्यादा गर्म होता है और गिना नहीं जाता। 0.05 ohm से नीचे वह ठंडा रहता है।",
  "Clip it on with the output off, plus on its 0 V ({0}) and minus on {1}, for the rail is negative, then hands off.":
    "आउटपुट बंद रखकर क्लिप लगाएँ, प्लस उसके 0 V ({0}) पर और माइनस {1} पर, क्योंकि रेल ऋणात्मक है, फिर हाथ दूर।",
  "Clip it on with the output off, plus on {0}, then hands off.":
    "आउटपुट बंद रखकर क्लिप लगाएँ, प्लस {0} पर, फिर हाथ दूर।",
  "{0}, limit {1}": "{0}, सीमा {1}",
  "{0} cell through {1}": "{0} का सेल {1} के रास्ते",
  "which part of the rail takes the current": "रेल का कौन सा पुर्जा करंट लेता है",
  "one part is clearly warmer than the rest": "एक पुर्जा बाकियों से साफ गर्म हो",
  "the current rises, or anything smells": "करंट बढ़े, या कुछ महके",
  "{0} is below every junction: nothing that is whole is harmed.":
    "{0} हर जंक्शन से नीचे है: जो ठीक है उसे नुकसान नहीं होता।",
  "{0} is below the rail's own volts: nothing that is whole is harmed.":
    "{0} रेल के अपने वोल्ट से नीचे है: जो ठीक है उसे नुकसान नहीं होता।",
  "Current limit first, then the clips, then the output.": "पहले करंट सीमा, फिर क्लिप, फिर आउटपुट।",
  "The resistor in series first, then the clips, the cell last.":
    "पहले सीरीज प्रतिरोधक, फिर क्लिप, सेल सबसे अंत में।",
  "At {0} nothing stands out: turn it up to {1}, limit {2}, the clips as they are, hands off.":
    "{0} पर कुछ अलग नहीं दिखता: {1} तक बढ़ाएँ, सीमा {2}, क्लिप जैसी हैं वैसी, हाथ दूर।",
  "At {0} nothing stands out, nor would a short of these ohms: turn it up to {1}, limit {2}, the clips as they are, hands off.":
    "{0} पर कुछ अलग नहीं दिखता, और इतने ओम का शॉर्ट दिखता भी नहीं: {1} तक बढ़ाएँ, सीमा {2}, क्लिप जैसी हैं वैसी, हाथ दूर।",
  "The {0} rail is fed: after a minute one picture from the camera tells which part across it is warmest.":
    "{0} रेल को सप्लाई मिल रही है: एक मिनट बाद कैमरे की एक तस्वीर बताती है कि उसके आर-पार कौन सा पुर्जा सबसे गर्म है।",
  "The {0} rail is fed: after a minute the spot thermometer from a hand's breadth away tells which part across it is warmest.":
    "{0} रेल को सप्लाई मिल रही है: एक मिनट बाद स्पॉट थर्मामीटर हथेली भर दूर से बताता है कि उसके आर-पार कौन सा पुर्जा सबसे गर्म है।",
  "Hands off the board.": "बोर्ड से हाथ दूर।",
  "{0} still reads low": "{0} अब भी कम पढ़ता है",
  "{0} reads high": "{0} ऊँचा पढ़ता है",
  "With one end of {0} up the {1} rail is in two halves; ohms from {2} to {3} tell in which the short is.":
    "{0} का एक सिरा उठाने पर {1} रेल दो हिस्सों में बँट जाती है; {2} से {3} के ओम बताते हैं कि शॉर्ट किसमें है।",
  "Milliohm meter, four wires, on each part's own two pins.":
    "मिलीओम मीटर, चार तार, हर पुर्जे की अपनी दो पिनों पर।",
  "Bench supply at {0}, limit {1}: clip it and the meter (millivolts) to the part's own two pins with the output off, switch the output on, read volts over amps, switch it off before the clips move.":
    "बेंच सप्लाई {0} पर, सीमा {1}: आउटपुट बंद रखकर इसे और मीटर (मिलीवोल्ट) को पुर्जे की अपनी दो पिनों पर क्लिप करें, आउटपुट चालू करें, वोल्ट बटा एम्पियर पढ़ें, क्लिप हटाने से पहले बंद करें।",
  "A {0} rechargeable cell through {1}: clip it and the meter (millivolts) to the part's own two pins, close it, read; the amps are the volts across the resistor. Open it before the clips move.":
    "{0} का रिचार्जेबल सेल {1} के रास्ते: इसे और मीटर (मिलीवोल्ट) को पुर्जे की अपनी दो पिनों पर क्लिप करें, जोड़ें, पढ़ें; एम्पियर प्रतिरोधक के वोल्ट हैं। क्लिप हटाने से पहले खोलें।",
  "The same reading once more: what it showed fits badly with the rest, and probes slip.":
    "वही माप एक बार फिर: जो दिखा वह बाकी से मेल नहीं खाता, और प्रोब फिसलते हैं।",
  "The same reading once more: much hangs on it, and a probe slips now and then.":
    "वही माप एक बार फिर: इस पर बहुत कुछ टिका है, और प्रोब कभी-कभी फिसलता है।",
  "Read before {0} was replaced; once more now.": "{0} बदलने से पहले पढ़ा था; अब एक बार फिर।",
  "Read before {0} was put back; once more now.": "{0} वापस लगाने से पहले पढ़ा था; अब एक बार फिर।",
  "Read before {0} was resoldered; once more now.": "{0} को फिर सोल्डर करने से पहले पढ़ा था; अब एक बार फिर।",
  "Read before the board area was resoldered; once more now.":
    "बोर्ड को फिर सोल्डर करने से पहले पढ़ा था; अब एक बार फिर।",
  "Read before the {0} area was resoldered; once more now.":
    "{0} वाला हिस्सा फिर सोल्डर करने से पहले पढ़ा था; अब एक बार फिर।",
  "Read before {0} was cleaned; once more now.": "{0} साफ करने से पहले पढ़ा था; अब एक बार फिर।",
  "Read before the board area was cleaned; once more now.": "बोर्ड साफ करने से पहले पढ़ा था; अब एक बार फिर।",
  "Read before the {0} area was cleaned; once more now.":
    "{0} वाला हिस्सा साफ करने से पहले पढ़ा था; अब एक बार फिर।",
  "Read before {0} pin {1} was soldered back; once more now.":
    "{0} की पिन {1} वापस सोल्डर करने से पहले पढ़ा था; अब एक बार फिर।",
  "Read before the board was powered; once more now.": "बोर्ड चालू करने से पहले पढ़ा था; अब एक बार फिर।",
  "the repeats read one way": "दोबारा लिए माप एक तरह पढ़ते हैं",
  "the repeats read another way": "दोबारा लिए माप दूसरी तरह पढ़ते हैं",
  "the repeats read a third way": "दोबारा लिए माप तीसरी तरह पढ़ते हैं",
  "the repeats read way {0}": "दोबारा लिए माप {0} नंबर की तरह पढ़ते हैं",
  "With the plug of {0} pulled, what hangs together through it stands apart. Then again, red to black: {1}.":
    "{0} का प्लग निकालने पर उससे जुड़े हिस्से अलग हो जाते हैं। फिर दोबारा, लाल से काला: {1}।",
  "Nothing more is to be seen: output off, clips off.": "और कुछ देखने को नहीं: आउटपुट बंद, क्लिप हटाएँ।",
  "Write down the amps on the supply's own display once they stand still. No meter goes across the rail for it: in its amps range it is a short. Nothing on the board is touched; then switch off.":
    "सप्लाई के अपने डिस्प्ले पर एम्पियर स्थिर होने पर लिखें। इसके लिए रेल के आर-पार कोई मीटर नहीं लगता: एम्पियर रेंज में वह शॉर्ट है। बोर्ड पर कुछ न छुएँ; फिर बंद करें।",
  "The current rises or something grows hot: switch off at once.": "करंट बढ़े या कुछ गर्म हो: तुरंत बंद करें।",
  "The red probe stays where it is: take the whole row.": "लाल प्रोब वहीं रहता है: पूरी पंक्ति लें।",
  "The black probe stays where it is: take the whole row.": "काला प्रोब वहीं रहता है: पूरी पंक्ति लें।",
  "The meter is set already: take the whole row.": "मीटर पहले से सेट है: पूरी पंक्ति लें।",
  "A look at {0} costs next to nothing, and nobody has taken it yet.":
    "{0} को देखने में लगभग कुछ नहीं लगता, और अब तक किसी ने नहीं देखा।",
  "Damage on {0} would speak for {1}; a clean body clears nothing for certain.":
    "{0} पर क्षति हो तो इशारा {1} की ओर; साफ ढाँचा किसी को पक्का बरी नहीं करता।",
  "Cheap, and nothing has tested it yet.": "सस्ता है, और अब तक किसी ने इसे नहीं परखा।",
  "Shows whether {0}.": "दिखाता है कि क्या {0}।",
  "Shows which of these it is, if any: {0}.": "दिखाता है कि इनमें से कौन है, अगर कोई है: {0}।",
  "{0} cannot be bought: a reading that accuses it ({1}) may end the job, so this comes before more money is spent.":
    "{0} खरीदा नहीं जा सकता: इसे दोषी ठहराने वाला माप ({1}) काम खत्म कर सकता है, इसलिए और पैसा लगाने से पहले यह।",
  "{0} cannot be bought: a reading that accuses it ({1}) may end the job, so this comes before any money is spent.":
    "{0} खरीदा नहीं जा सकता: इसे दोषी ठहराने वाला माप ({1}) काम खत्म कर सकता है, इसलिए कोई पैसा लगाने से पहले यह।",
  "{0} ({1}, likeliest {2})": "{0} ({1}, सबसे संभव: {2})",
  "{0}: no check left is worth its minutes before that.": "{0}: उससे पहले कोई जाँच अपने मिनटों के लायक नहीं बची।",
  "Due with it before the next power-up: {0}.": "अगली बार चालू करने से पहले इसके साथ: {0}।",
  "{0} last: fitted before what blew it, a fuse blows again.":
    "{0} सबसे अंत में: उड़ाने वाले से पहले लगा फ्यूज फिर उड़ता है।",
  "After that, {0} that the board is whole.": "उसके बाद {0} कि बोर्ड ठीक है।",
  "{0} is dead ({1}) and nobody sells it. Anything fitted now is money lost.":
    "{0} मर चुका है ({1}) और कोई इसे नहीं बेचता। अब जो भी लगाएँ, पैसा डूबा।",
  "By the readings this board is more likely whole ({0}) than not, yet it has not been seen to run, and nothing left on this bench tells why. Before it is given back: what tells it to run may be missing (a command, a door or float switch, a sensor, the fan's signal). Try it in its own unit.":
    "मापों के अनुसार यह बोर्ड ठीक होने की संभावना ({0}) अधिक है, फिर भी इसे चलते नहीं देखा गया, और इस बेंच पर बचा कुछ भी कारण नहीं बताता। लौटाने से पहले: जो इसे चलने को कहता है वह शायद नहीं मिल रहा (कमांड, दरवाजे या फ्लोट का स्विच, सेंसर, पंखे का सिग्नल)। इसे इसके अपने उपकरण में आजमाएँ।",
  "What is left to find and to replace would cost more in minutes and parts than the repair earns.":
    "जो खोजना और बदलना बाकी है, उसमें मिनट और पुर्जे मरम्मत की कमाई से अधिक लगेंगे।",
  "The likeliest repair from here is {0}: {1} of parts, {2}, and {3} that it is enough. Weighed with what a failed try costs, that is worth less than stopping, at {4} for the repair.":
    "यहाँ से सबसे संभव मरम्मत {0} है: पुर्जे {1}, {2}, और {3} कि इतना काफी है। असफल कोशिश की लागत मिलाकर, मरम्मत के {4} पर यह रुकने से कम लाभ का है।",
  "{0} has to be ordered.": "{0} मँगाना होगा।",
  "For {0} one lies at hand.": "{0} के लिए एक पास रखा है।",
  "For {0} {1} lies at hand.": "{0} के लिए {1} पास रखा है।",
  "For {0} one lies at hand, pulled: read it in the hand before it goes in.":
    "{0} के लिए एक पास रखा है, निकाला हुआ: लगाने से पहले हाथ में मापें।",
  "For {0} {1} lies at hand, pulled: read it in the hand before it goes in.":
    "{0} के लिए {1} पास रखा है, निकाला हुआ: लगाने से पहले हाथ में मापें।",
  "There are {0}: {1} needs another.": {
    en: "There is one: {1} needs another.",
    one: "{0} ही है: {1} को दूसरा चाहिए।",
    other: "{0} हैं: {1} को दूसरा चाहिए।",
  },
  "There are {0}: {1} need others.": {
    en: "There is one: {1} need others.",
    one: "{0} ही है: {1} को दूसरे चाहिए।",
    other: "{0} हैं: {1} को दूसरे चाहिए।",
  },
  "There are {0}; for {1} {2} lies at hand.": {
    en: "There is one; for {1} {2} lies at hand.",
    one: "{0} ही है; {1} के लिए {2} पास रखा है।",
    other: "{0} हैं; {1} के लिए {2} पास रखा है।",
  },
};
