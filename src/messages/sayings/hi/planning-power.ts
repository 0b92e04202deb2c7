import type { Sayings } from "../../said.ts";

export const PLANNING_POWER: Sayings = {
  "below 10 V": "10 V से कम",
  "empty: go on": "खाली: आगे बढ़ें",
  "10 V or more": "10 V या अधिक",
  "still charged: discharge it through a resistor, then measure again":
    "अब भी आवेशित: प्रतिरोधक से डिस्चार्ज करें, फिर दोबारा मापें",
  "The resistor may have emptied {0} as well: read again at each one's own pins.":
    "प्रतिरोधक ने {0} को भी खाली कर दिया होगा: हर एक की अपनी पिनों पर फिर पढ़ें।",
  "It has done its work there; {0} still holds {1} and is next.":
    "वहाँ उसका काम हो गया; {0} में अब भी {1} है और अगला वही है।",
  "The resistor needs about {0} to bring {1} below 10 V. Leave it on and read again at the pins of each.":
    "{1} को 10 V से नीचे लाने में प्रतिरोधक को लगभग {0} लगते हैं। उसे लगा रहने दें और हर एक की पिनों पर फिर पढ़ें।",
  "The resistor needs about {0} to bring {1} below 10 V. Leave it on and read again at the pins of {2}.":
    "{1} को 10 V से नीचे लाने में प्रतिरोधक को लगभग {0} लगते हैं। उसे लगा रहने दें और {2} की पिनों पर फिर पढ़ें।",
  "If it does not fall, something still feeds it: is the plug out, does a motor or fan turn, do the clips bite?":
    "अगर वह न घटे तो कुछ उसे अब भी सप्लाई दे रहा है: प्लग निकला है, कोई मोटर या पंखा घूम रहा है, क्लिप ठीक पकड़े हैं?",
  "{0} reads over the meter's range ({1}).": "{0} मीटर की रेंज से ऊपर पढ़ता है ({1})।",
  "{0} holds {1} ({2}).": "{0} में {1} है ({2})।",
  "Then measure again.": "फिर दोबारा मापें।",
  "Clip {0}, {1}, across its own pins: about {2} to fall below 10 V.":
    "उसकी अपनी पिनों के आर-पार {0}, {1} क्लिप करें: 10 V से नीचे आने में लगभग {2}।",
  "Clip {0}, {1}, across its own pins: about {2} to fall below 10 V, {3} at first.":
    "उसकी अपनी पिनों के आर-पार {0}, {1} क्लिप करें: 10 V से नीचे आने में लगभग {2}, शुरू में {3}।",
  "Clip {0}, {1} or more, wire-wound, across its own pins: about {2} to fall below 10 V.":
    "उसकी अपनी पिनों के आर-पार {0}, {1} या अधिक, वायर-वाउंड, क्लिप करें: 10 V से नीचे आने में लगभग {2}।",
  "Clip {0}, {1} or more, wire-wound, across its own pins: about {2} to fall below 10 V, {3} at first.":
    "उसकी अपनी पिनों के आर-पार {0}, {1} या अधिक, वायर-वाउंड, क्लिप करें: 10 V से नीचे आने में लगभग {2}, शुरू में {3}।",
  "By itself it may come back to {0} over hours: read it again after any pause.":
    "अपने आप यह कुछ घंटों में {0} तक लौट सकता है: हर ठहराव के बाद फिर पढ़ें।",
  "Without one two such lamps in series do it in a flash; a dark lamp is no proof.":
    "वह न हो तो ऐसे दो लैंप सीरीज में एक चमक में यह कर देते हैं; बुझा लैंप कोई सबूत नहीं।",
  "Without one the {0} lamp across it does it in a flash; a dark lamp is no proof.":
    "वह न हो तो आर-पार {0} का लैंप एक चमक में यह कर देता है; बुझा लैंप कोई सबूत नहीं।",
  "under 0.1 J": "0.1 J से कम",
  "a flash, then dark": "एक चमक, फिर बुझा",
  "a flash, then dim": "एक चमक, फिर मंद",
  "slow pulsing: the lamp is too small for this board": "धीमा टिमटिमाना: लैंप इस बोर्ड के लिए बहुत छोटा है",
  bright: "तेज",
  "stays bright": "तेज बना रहता है",
  "a hard short: off, back to the cold checks": "सीधा शॉर्ट: बंद करें, ठंडी जाँचों पर लौटें",
  "dark at once, no bus": "तुरंत बुझा, बस नहीं",
  "the feed is open": "फीड खुली है",
  lamp: "लैंप",
  "nothing warm to speak of after 2 min": "2 min बाद कुछ खास गर्म नहीं",
  "over the room after 2 min: {0}": "2 min बाद कमरे से ऊपर: {0}",
  heat: "गर्मी",
  "smoke, a crackle, a smell": "धुआँ, चटकने की आवाज, गंध",
  "lamp bright for more than {0} (a PTC is in the way)": "लैंप {0} से अधिक तेज (रास्ते में PTC है)",
  "lamp bright for more than {0}": "लैंप {0} से अधिक तेज",
  "supply at its limit for more than {0}": "सप्लाई {0} से अधिक अपनी सीमा पर",
  "a rail over by {0} or more": "कोई रेल {0} या अधिक ऊपर",
  "bus above {0}, all that its capacitors bear": "बस {0} से ऊपर, जितना उसके संधारित्र सहते हैं",
  "a part over {0} at 20 s, over {1} at 2 min (from outside, never by finger)":
    "कोई पुर्जा 20 s पर {0} से ऊपर, 2 min पर {1} से ऊपर (बाहर से, कभी उँगली से नहीं)",
  "small parts: what is hot now is shorted or overdriven":
    "छोटे पुर्जे: जो अभी गर्म है वह शॉर्ट है या हद से ज्यादा चल रहा है",
  "the warmest parts against their band": "सबसे गर्म पुर्जे, उनकी सीमा से मिलाकर",
  "one thermal cycle, where it was worth the wait": "एक थर्मल चक्र, जहाँ इंतजार के लायक था",
  "bench supply into a rail": "बेंच सप्लाई एक रेल में",
  "it pulsed, which may be the lamp itself, and no larger one is at hand":
    "टिमटिमाया, जो खुद लैंप के कारण हो सकता है, और बड़ा लैंप पास नहीं",
  "it showed nothing that was written down: work on the board first":
    "लिखा हुआ कुछ नहीं दिखा: पहले बोर्ड पर काम करें",
  "it showed {0}: work on the board first": "दिखा {0}: पहले बोर्ड पर काम करें",
  "wants an isolated supply of 100 to 150 V DC with a current limit":
    "100 से 150 V DC की आइसोलेटेड सप्लाई चाहिए, करंट सीमा के साथ",
  "wants a bench supply with a current limit": "करंट सीमा वाली बेंच सप्लाई चाहिए",
  "nothing on this board that it could feed": "इस बोर्ड पर ऐसा कुछ नहीं जिसे यह सप्लाई दे",
  "not needed: the board has borne more": "जरूरत नहीं: बोर्ड इससे अधिक सह चुका है",
  "spares less than its minutes cost": "जितने मिनट लगते हैं उससे कम बचाता है",
  "wants a series lamp: 100 W, filament or halogen": "सीरीज लैंप चाहिए: 100 W, फिलामेंट या हैलोजन",
  "after the mains without its motor; then its plug goes back on":
    "मोटर के बिना मेन्स के बाद; तब उसका प्लग वापस लगता है",
  "{0}: until it reads well, or is overruled": "{0}: जब तक ठीक न पढ़े, या इसे नकार न दिया जाए",
  "after the rung below": "नीचे वाले पायदान के बाद",
  "after the lamp has gone dark or dim, and the bus has been read at its volts":
    "लैंप बुझने या मंद होने और बस अपने वोल्ट पर पढ़े जाने के बाद",
  "the bus": "बस",
  "the {0} rail": "{0} रेल",
  "{0}, which its relay has to bypass": "{0}, जिसे उसके रिले को बाईपास करना है",
  "the supply of {0}": "{0} की सप्लाई",
  "the coil of {0}": "{0} की कॉइल",
  "Nothing can be read there: switch off and pull the plug.": "वहाँ कुछ नहीं पढ़ा जा सकता: बंद करें और प्लग निकालें।",
  "Take the warmth of {0} now with the camera or the spot thermometer, a hand's breadth away: nothing touches a live board. What cooks shows before it fails.":
    "अब {0} की गर्मी कैमरे या स्पॉट थर्मामीटर से लें, हथेली भर दूर से: चालू बोर्ड को कुछ नहीं छूता। जो तप रहा है वह बिगड़ने से पहले दिख जाता है।",
  "Take the warmth of {0} {1} after switch-on with the camera or the spot thermometer, a hand's breadth away: nothing touches a live board. What cooks shows before it fails.":
    "चालू करने के {1} बाद {0} की गर्मी कैमरे या स्पॉट थर्मामीटर से लें, हथेली भर दूर से: चालू बोर्ड को कुछ नहीं छूता। जो तप रहा है वह बिगड़ने से पहले दिख जाता है।",
  "The meter hangs on {0}: read it now, with the hands off the board, then switch off.":
    "मीटर {0} पर लगा है: अब पढ़ें, हाथ बोर्ड से दूर, फिर बंद करें।",
  "The meter hangs on {0}: read it {1} after switch-on, with the hands off the board.":
    "मीटर {0} पर लगा है: चालू करने के {1} बाद पढ़ें, हाथ बोर्ड से दूर।",
  "It ran at idle, and that proves little: {0} with a dummy load of about {1} (three equal lamps in a star) show a boost that never starts, an inrush part left in the way, a supply that gives in.":
    "खाली चला, और इससे कम साबित होता है: लगभग {1} के नकली लोड (तीन बराबर लैंप स्टार में) के साथ {0} दिखाते हैं कि बूस्ट कभी शुरू नहीं होता, इनरश पुर्जा रास्ते में रह गया, या सप्लाई बैठ जाती है।",
  "It ran at idle, and that proves little: {0} with its own load, held fast, show a boost that never starts, an inrush part left in the way, a supply that gives in.":
    "खाली चला, और इससे कम साबित होता है: अपने ही लोड के साथ, कसकर पकड़े हुए, {0} दिखाते हैं कि बूस्ट कभी शुरू नहीं होता, इनरश पुर्जा रास्ते में रह गया, या सप्लाई बैठ जाती है।",
  "Nobody reaches inside: a meter that is clipped on stays where it is.":
    "कोई अंदर हाथ नहीं डालता: क्लिप किया मीटर जहाँ है वहीं रहता है।",
  "Clip the meter on first: {0}.": "पहले मीटर क्लिप करें: {0}।",
  "A motor that was unplugged goes back on only once every store is proven empty.":
    "निकाला हुआ मोटर तभी वापस लगता है जब आवेश रखने वाला हर पुर्जा खाली साबित हो।",
  "Heatsink on, cover or barrier in place, then hands off.":
    "हीटसिंक लगा हो, ढक्कन या रोक अपनी जगह, फिर हाथ दूर।",
  "Once it has run for {0}, or stopped before: switch off, pull the plug, and write down what it did until then.":
    "{0} चल चुके, या पहले रुक जाए: बंद करें, प्लग निकालें, और तब तक जो हुआ लिखें।",
  "What is doubted of it is worth the wait: let it get warm through, in sight, for {0}, or until it stops: switch off, pull the plug, and write down what it did until then.":
    "इस पर जो शक है वह इंतजार के लायक है: नजर के सामने {0} तक, या रुकने तक, पूरा गर्म होने दें: बंद करें, प्लग निकालें, और तब तक जो हुआ लिखें।",
  "The supply's own display shows what it gives: look twice at which lead is plus.":
    "सप्लाई का अपना डिस्प्ले दिखाता है कि वह क्या दे रही है: कौन सा लीड प्लस है, दो बार देखें।",
  "Nothing is touched on a live board. Write down what was seen, then switch off and pull the plug.":
    "चालू बोर्ड पर कुछ नहीं छुआ जाता। जो दिखा लिख लें, फिर बंद करें और प्लग निकालें।",
  "Every store of charge is empty.": "आवेश रखने वाला हर पुर्जा खाली है।",
  "The proof was overruled.": "सबूत को नकार दिया गया।",
  "The resistor comes off: it would show in every cold reading across it, and it must be off before power.":
    "प्रतिरोधक हटता है: वह अपने आर-पार के हर ठंडे माप में दिखता, और चालू करने से पहले उसे हटा होना ही चाहिए।",
  "Nothing says yet that this board is dead: volts across every store of charge, at its own pins, before anything else is touched.":
    "अब तक कुछ नहीं कहता कि यह बोर्ड बेजान है: कुछ और छूने से पहले आवेश रखने वाले हर पुर्जे के वोल्ट, उसकी अपनी पिनों पर।",
  "Since power was last on these have not been proven empty: below 10 V at each one's own pins opens the cold checks.":
    "पिछली बार चालू होने के बाद ये खाली साबित नहीं हुए: हर एक की अपनी पिनों पर 10 V से कम होने पर ही ठंडी जाँचें खुलती हैं।",
  "What turned has charged the bus through the diodes of its switches: below 10 V at each one's own pins opens the cold checks again.":
    "जो घूमा उसने स्विचों के डायोड से बस को आवेशित किया: हर एक की अपनी पिनों पर 10 V से कम होने पर ही ठंडी जाँचें फिर खुलती हैं।",
  "The board is off and showed volts: something charges it. Is the plug out, does a motor or fan turn? Then below 10 V at each store's own pins.":
    "बोर्ड बंद है और वोल्ट दिखे: कुछ इसे आवेशित कर रहा है। प्लग निकला है, कोई मोटर या पंखा घूम रहा है? फिर आवेश रखने वाले हर पुर्जे की अपनी पिनों पर 10 V से कम।",
  "A capacitor that is put on a board brings its own charge, and shares it: {0} below 10 V at its own pins opens the cold checks again.":
    "बोर्ड पर लगाया संधारित्र अपना आवेश साथ लाता है, और बाँटता है: {0} अपनी पिनों पर 10 V से कम हो तभी ठंडी जाँचें फिर खुलती हैं।",
  "{0} reads well, and its plug comes off all the same: the first power is without a motor. It goes back on once the board has borne the mains.":
    "{0} ठीक पढ़ता है, फिर भी उसका प्लग निकलता है: पहली बार बिजली मोटर के बिना। बोर्ड मेन्स सह ले तब वापस लगता है।",
  "Before {0} is driven: its plug off, its windings and its insulation to earth read by themselves. A bad one kills the board again.":
    "{0} को चलाने से पहले: उसका प्लग निकला, उसकी वाइंडिंग और अर्थ से इंसुलेशन अलग से पढ़ी हुई। खराब मोटर बोर्ड को फिर मार देता है।",
  "{0} goes back on its plug before power.": "चालू करने से पहले {0} अपने प्लग पर वापस लगता है।",
  "{0} stays unplugged: the first power is without a motor.": "{0} निकला रहता है: पहली बार बिजली मोटर के बिना।",
  "{0} stays unplugged: {1}.": "{0} निकला रहता है: {1}।",
  "{0} is connected unread, as overruled.": "{0} बिना पढ़े जुड़ा है, जैसा तय किया गया।",
  "{0} reads well and is plugged in.": "{0} ठीक पढ़ता है और जुड़ा है।",
  "The windings of {0}, at its own plug, have to read alike; one that differs would take the new parts with it.":
    "{0} की वाइंडिंग, उसके अपने प्लग पर, एक जैसी पढ़नी चाहिए; जो अलग हो वह नए पुर्जों को भी ले जाएगी।",
  "Insulation of {0} to its earth, its plug off.": "{0} का अपने अर्थ से इंसुलेशन, प्लग निकला हुआ।",
  "Insulation of {0} from a winding to its frame, its plug off, in megohms: an insulation tester on the motor alone, never on the board; else the highest ohms range.":
    "{0} का वाइंडिंग से ढाँचे तक इंसुलेशन, प्लग निकला हुआ, मेगाओम में: इंसुलेशन टेस्टर केवल मोटर पर, बोर्ड पर कभी नहीं; वरना ओम की सबसे ऊँची रेंज।",
  "Not read, it stays unplugged.": "बिना पढ़े वह निकला रहता है।",
  "The rail at its own volts from the bench supply says what cold checks cannot, and no mains is near.":
    "बेंच सप्लाई से अपने वोल्ट पर रेल वह बताती है जो ठंडी जाँचें नहीं बता सकतीं, और मेन्स पास नहीं।",
  "Some volts across the bus with a small limit show a short that the mains would feed.":
    "छोटी सीमा के साथ बस पर कुछ वोल्ट वह शॉर्ट दिखा देते हैं जिसे मेन्स करंट देता।",
  "The small supply starts from an isolated bus before any mains is there.":
    "मेन्स आने से पहले छोटी सप्लाई आइसोलेटेड बस से शुरू होती है।",
  "No cold check left is worth its minutes; power says more, and the lamp holds the mains back.":
    "कोई ठंडी जाँच अपने मिनटों के लायक नहीं बची; चालू करने से अधिक पता चलता है, और लैंप मेन्स को रोके रखता है।",
  "No cold check left is worth its minutes; power says more.":
    "कोई ठंडी जाँच अपने मिनटों के लायक नहीं बची; चालू करने से अधिक पता चलता है।",
  "Clip the meters on first.": "पहले मीटर क्लिप करें।",
  "Then hands off.": "फिर हाथ दूर।",
  "Nothing read behind the lamp shows that the bus stands: gone dark proves nothing, a short behind a hot limiter goes dark too.":
    "लैंप के पीछे पढ़ा कुछ भी नहीं दिखाता कि बस खड़ी है: बुझना कुछ साबित नहीं करता, गर्म लिमिटर के पीछे का शॉर्ट भी बुझ जाता है।",
  "Pulsing may only be the lamp: a larger one carries the board.":
    "टिमटिमाना केवल लैंप के कारण हो सकता है: बड़ा लैंप बोर्ड को चला लेता है।",
  "The board bears power and shows no more by itself: once more, with the meter at another place.":
    "बोर्ड बिजली सह लेता है और अपने आप और कुछ नहीं दिखाता: एक बार फिर, मीटर दूसरी जगह पर।",
  "The lamp pulsed and did nothing else. That may be the lamp itself, and no larger one is at hand: on the mains at the risk told below.":
    "लैंप टिमटिमाया और कुछ नहीं किया। यह खुद लैंप के कारण हो सकता है, और बड़ा लैंप पास नहीं: नीचे बताए जोखिम पर मेन्स पर।",
  "The lamp showed nothing hard, and it passes too little to prove the board.":
    "लैंप ने कोई सीधा शॉर्ट नहीं दिखाया, और वह इतना कम करंट देता है कि बोर्ड साबित नहीं होता।",
  "It bore the mains without its motor: now with it.": "मोटर के बिना मेन्स सह लिया: अब मोटर के साथ।",
  "Hardly anything is believed left that power could break: what a lamp would spare is worth less than its minutes.":
    "माना जाता है कि ऐसा लगभग कुछ नहीं बचा जिसे बिजली तोड़े: लैंप जो बचाएगा वह उसके मिनटों से कम कीमत का है।",
  "Set volts and limit with the leads in the air, switch off, clip on plus to plus, then switch on.":
    "लीड हवा में रखकर वोल्ट और सीमा सेट करें, बंद करें, प्लस से प्लस क्लिप करें, फिर चालू करें।",
  "On the mains only through the right fuse.": "मेन्स पर केवल सही फ्यूज के रास्ते।",
  mains: "मेन्स",
  "lamp, {0}": "लैंप, {0}",
  "{0} into the bus": "बस में {0}",
  "{0} into {1}": "{1} में {0}",
  diode: "डायोड",
  farads: "धारिता",
  "look at {0}": "{0} को देखें",
  "Nobody reaches inside: the meter, if one is clipped on, stays where it is.":
    "कोई अंदर हाथ नहीं डालता: मीटर क्लिप किया हो तो जहाँ है वहीं रहता है।",
  "red on {0}, black on {1}, AC volts ({2})": "लाल {0} पर, काला {1} पर, AC वोल्ट ({2})",
  "red on {0}, black on {1}, DC volts ({2})": "लाल {0} पर, काला {1} पर, DC वोल्ट ({2})",
  "{0}; second meter {1}": "{0}; दूसरा मीटर: {1}",
  "Clip the meter on first: {0}. A lamp gone dark proves nothing until this shows that the bus stands.":
    "पहले मीटर क्लिप करें: {0}। जब तक यह न दिखाए कि बस खड़ी है, बुझा लैंप कुछ साबित नहीं करता।",
  "Clip the meter on first: {0}. What it shows tells most.":
    "पहले मीटर क्लिप करें: {0}। जो यह दिखाएगा उससे सबसे अधिक पता चलता है।",
  "some parts die at switch-on with nothing else wrong": "कुछ पुर्जे चालू करते ही मर जाते हैं, और कुछ खराब न हो तब भी",
  "{0} may be left ({1}), the likeliest cause": "{0} बाकी हो सकता है ({1}), सबसे संभव कारण",
  "bench supply into the drive rail": "बेंच सप्लाई ड्राइव रेल में",
  "the rail, the drivers and the control side of the module, with no mains near":
    "रेल, ड्राइवर और मॉड्यूल का कंट्रोल पक्ष, मेन्स के बिना",
  "20 to 100 mA and steady": "20 से 100 mA और स्थिर",
  "over 200 mA or rising, the limit reached, or any part hot":
    "200 mA से ऊपर या बढ़ता हुआ, सीमा आ गई, या कोई पुर्जा गर्म",
  "bench supply into a logic rail": "बेंच सप्लाई लॉजिक रेल में",
  "the regulator and the controller behind it, with no mains near": "रेगुलेटर और उसके पीछे का कंट्रोलर, मेन्स के बिना",
  "10 to 80 mA, and a light or the crystal alive": "10 से 80 mA, और कोई बत्ती या क्रिस्टल जीवित",
  "the limit reached, or the controller warm": "सीमा आ गई, या कंट्रोलर गर्म",
  "low volts across the bus": "बस पर कम वोल्ट",
  "no short across the bus at some volts, and no switch that conducts by itself":
    "कुछ वोल्ट पर बस में शॉर्ट नहीं, और कोई स्विच अपने आप चालू नहीं",
  "the current falls to a few milliamps once the bus is charged": "बस आवेशित होने पर करंट कुछ मिलीएम्पियर तक गिरे",
  "the current stays at the limit; clipped on the wrong way round, the body diodes conduct":
    "करंट सीमा पर बना रहे; उल्टा क्लिप करने पर बॉडी डायोड चालू होते हैं",
  "100 to 150 V isolated across the bus": "बस पर 100 से 150 V आइसोलेटेड",
  "the small supply starts and makes its rails": "छोटी सप्लाई शुरू होकर अपनी रेलें बनाती है",
  "the rails come up and stay": "रेलें आएँ और बनी रहें",
  "hiccup, heat, or the limit reached": "हिचकी, गर्मी, या सीमा आ गई",
  "mains through a series lamp": "सीरीज लैंप के रास्ते मेन्स",
  "inrush, bridge, bus, the relay's click, and the small supply at full volts":
    "इनरश, ब्रिज, बस, रिले की क्लिक, और पूरे वोल्ट पर छोटी सप्लाई",
  "the lamp flashes, then goes dark, the bus stands at its volts and the rails are right":
    "लैंप चमककर बुझे, बस अपने वोल्ट पर खड़ी हो और रेलें सही हों",
  "bright and staying so: a hard short. Dark with no bus proves nothing: the feed is open, or a short hides behind a hot PTC":
    "तेज और वैसा ही बना रहे: सीधा शॉर्ट। बस के बिना बुझा कुछ साबित नहीं करता: फीड खुली है, या शॉर्ट गर्म PTC के पीछे छिपा है",
  "mains without the lamp, no motor": "लैंप के बिना मेन्स, मोटर नहीं",
  "the drive at full energy: gate signals, no cross conduction, three phases equal":
    "पूरी ऊर्जा पर ड्राइव: गेट सिग्नल, क्रॉस कंडक्शन नहीं, तीनों फेज बराबर",
  "it runs with nothing hot; where three equal lamps in star are at hand in the motor's place, they glow alike":
    "बिना कुछ गर्म हुए चले; मोटर की जगह स्टार में तीन बराबर लैंप हों तो वे एक जैसे जलें",
  "the fuse blows, something smokes, or a phase differs": "फ्यूज उड़े, कहीं धुआँ हो, या कोई फेज अलग हो",
  "mains with its motor and load": "मोटर और लोड के साथ मेन्स",
  "everything, once it is warm through": "पूरा गर्म होने पर सब कुछ",
  "20 to 60 minutes at load without a trip": "लोड पर 20 से 60 मिनट बिना ट्रिप",
  "a trip, heat, or noise: off at once": "ट्रिप, गर्मी या आवाज: तुरंत बंद",
  "it starts through the lamp: on to the mains": "लैंप के रास्ते शुरू होता है: अब मेन्स पर",
  "after a flash: no hard short, on to the mains; dark at once with no bus volts: the feed is open":
    "चमक के बाद: सीधा शॉर्ट नहीं, मेन्स पर बढ़ें; तुरंत बुझा और बस पर वोल्ट नहीं: फीड खुली है",
  "a load or a leak, no hard short": "लोड या रिसाव, सीधा शॉर्ट नहीं",
  "the small supply ticks: a rail is loaded, or the lamp is too small":
    "छोटी सप्लाई टिक-टिक करती है: किसी रेल पर लोड है, या लैंप बहुत छोटा है",
  "if it stays: a hard short, switch off and go back to the cold checks":
    "बना रहे तो: सीधा शॉर्ट, बंद करें और ठंडी जाँचों पर लौटें",
  "nothing seen: read the bus at the clips": "कुछ नहीं दिखा: क्लिपों पर बस पढ़ें",
  "whole as far as it shows: load it": "जितना दिखता है ठीक है: लोड दें",
  "no sign of life: back to the cold checks": "जीवन का कोई चिह्न नहीं: ठंडी जाँचों पर लौटें",
  "it holds for as long as it was run": "जितनी देर चलाया उतनी देर टिकता है",
  "it stopped by itself: weak once it is warm or loaded": "अपने आप रुका: गर्म या लोड होने पर कमजोर",
  "it trips once it is loaded: weak, or a leak that cooks": "लोड होते ही ट्रिप होता है: कमजोर, या तपता हुआ रिसाव",
  "a short is left: back to the cold checks, no new fuse before it is found":
    "शॉर्ट बाकी है: ठंडी जाँचों पर लौटें, मिलने से पहले नया फ्यूज नहीं",
  "a short, or a leak to earth: back to the cold checks": "शॉर्ट, या अर्थ में रिसाव: ठंडी जाँचों पर लौटें",
  "switch off at once and look for what burnt": "तुरंत बंद करें और देखें क्या जला",
  "the supply is at its limit: switch off, find the load": "सप्लाई अपनी सीमा पर है: बंद करें, लोड खोजें",
  lit: "जली",
  "stays dark": "बुझी रही",
  clicks: "क्लिक हुआ",
  "no click": "क्लिक नहीं",
  turns: "घूमता है",
  "stands still": "रुका है",
  "signs of life": "चलने के संकेत",
  "all signs of life": "चलने के सब संकेत",
};
