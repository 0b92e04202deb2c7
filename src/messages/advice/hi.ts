import type { Translated } from "../catalogue.ts";
import type { ADVICE } from "./en.ts";

/** Hindi. */
export const ADVICE_HI = {
  "caution.charged": [
    "DANGER: the capacitors of this board can hold a deadly charge long after it is unplugged. Disconnect every supply, wait at least 15 minutes, then measure: bus plus to bus minus must read below 10 V before anything is touched.",
    "खतरा: प्लग निकालने के बहुत देर बाद भी इस बोर्ड के संधारित्रों में जानलेवा आवेश रह सकता है। हर सप्लाई अलग करें, कम से कम 15 मिनट रुकें, फिर मापें: कुछ भी छूने से पहले बस प्लस और बस माइनस के बीच 10 V से कम होना चाहिए।",
  ],
  "caution.live": [
    "With power on, every part of this board is at mains potential, bus minus included and the heatsink possibly too. Touch nothing.",
    "बिजली चालू रहते बोर्ड का हर हिस्सा मेन्स के विभव पर होता है, बस माइनस भी, और शायद हीटसिंक भी। कुछ न छुएँ।",
  ],
  "caution.licensed": [
    "Fitting, connecting and opening the unit is work for a licensed person under the local codes. This paper does not replace them, nor the maker's instructions.",
    "उपकरण को लगाना, जोड़ना और खोलना स्थानीय नियमों के अनुसार लाइसेंसधारी व्यक्ति का काम है। यह कागज न उन नियमों की जगह लेता है, न निर्माता के निर्देशों की।",
  ],
  "caution.smell": [
    "Smoke, a burnt smell, a tripped breaker or a blown fuse: switch off and do not try again.",
    "धुआँ, जलने की गंध, ट्रिप हुआ ब्रेकर या उड़ा हुआ फ्यूज: बंद करें और दोबारा कोशिश न करें।",
  ],
  "advice.surge.protect": [
    "Have a surge protector fitted at the supply, its earth wire short, and have the earth itself checked.",
    "सप्लाई पर सर्ज प्रोटेक्टर लगवाएँ, उसका अर्थ तार छोटा रखें, और अर्थ की जाँच करवाएँ।",
  ],
  "advice.surge.others": [
    "A surge may have hurt other units on the same supply: have them checked.",
    "सर्ज से उसी सप्लाई के दूसरे उपकरण भी बिगड़े हो सकते हैं: उनकी जाँच करवाएँ।",
  ],
  "advice.water.seal": [
    "Find where water or condensation got in and stop it there: cable entries from below, sealed, with a drip loop; drain holes kept open.",
    "पता करें कि पानी या नमी कहाँ से आई और उसे वहीं रोकें: केबल नीचे से, सील करके, ड्रिप लूप के साथ; निकासी छेद खुले रखें।",
  ],
  "advice.water.later": [
    "Corrosion can go on under the parts: after water a later failure stays more likely than after other causes.",
    "पुर्जों के नीचे जंग बढ़ती रह सकती है: पानी के बाद आगे खराबी की संभावना दूसरे कारणों से अधिक रहती है।",
  ],
  "advice.overload.load": [
    "Find out why it was overloaded before it runs again: does the motor or fan turn freely, is anything blocked, are its windings and insulation sound?",
    "दोबारा चलाने से पहले पता करें कि ओवरलोड क्यों हुआ: क्या मोटर या पंखा आसानी से घूमता है, कुछ अटका तो नहीं, वाइंडिंग और इंसुलेशन ठीक हैं?",
  ],
  "advice.overload.air": [
    "Keep the heatsink and the path of its air clean.",
    "हीटसिंक और उसकी हवा का रास्ता साफ रखें।",
  ],
  "advice.age.heat": [
    "Heat ages capacitors and fans: keep the unit cool and have both checked every few years.",
    "गर्मी से संधारित्र और पंखे पुराने होते हैं: उपकरण को ठंडा रखें और कुछ वर्षों में दोनों की जाँच करवाएँ।",
  ],
  "advice.insects.mesh": [
    "Close openings with fine mesh that does not stop the cooling air, and have the inside looked at once a year.",
    "खुले छेद महीन जाली से बंद करें जो ठंडी हवा न रोके, और साल में एक बार अंदर देखें।",
  ],
  "advice.impact.fasten": [
    "Fasten the unit so that it cannot shake, and check plugs and screws after every transport.",
    "उपकरण को ऐसे कसें कि हिले नहीं, और हर ढुलाई के बाद प्लग और पेंच जाँचें।",
  ],
  "advice.unknown.tell": [
    "The cause is not known: if it happens again, tell us at once, and what happened just before.",
    "कारण मालूम नहीं है: फिर हो तो तुरंत बताएँ, और ठीक पहले क्या हुआ था यह भी।",
  ],
  "fit.off": [
    "Switch off, unplug or lock off, and make sure that nobody can switch on again.",
    "बंद करें, प्लग निकालें या लॉक करें, और पक्का करें कि कोई दोबारा चालू न कर सके।",
  ],
  "fit.measure": [
    "Wait at least 15 minutes, then measure on the highest DC range between bus plus and bus minus: below 10 V. Only then touch.",
    "कम से कम 15 मिनट रुकें, फिर सबसे ऊँची DC रेंज पर बस प्लस और बस माइनस के बीच मापें: 10 V से कम। तभी छुएँ।",
  ],
  "fit.turns": [
    "Do not let the motor or fan turn while it is plugged in: turning, it charges the bus.",
    "जुड़े हुए मोटर या पंखे को घूमने न दें: घूमने पर वह बस को आवेशित करता है।",
  ],
  "fit.never": [
    "Never plug in or pull out the fan, the motor or any other plug while the unit has power. Switch off, wait, measure, then plug.",
    "उपकरण में बिजली रहते पंखा, मोटर या कोई भी प्लग कभी न लगाएँ, न निकालें। पहले बंद करें, रुकें, मापें, फिर लगाएँ।",
  ],
  "fit.marks": [
    "Go by the marks on the wires and by what was noted or photographed on arrival. Where neither tells, go by the maker's drawing; do not guess.",
    "तारों के निशान और आने के समय की टिप्पणी या तस्वीर के अनुसार चलें। दोनों से पता न चले तो निर्माता के चित्र के अनुसार; अंदाजा न लगाएँ।",
  ],
  "fit.bus": [
    "Bus plus and bus minus are never exchanged: exchanged, the board is destroyed at once.",
    "बस प्लस और बस माइनस कभी न बदलें: बदलने पर बोर्ड तुरंत नष्ट हो जाता है।",
  ],
  "fit.phases": [
    "The motor's phases go back in the order in which they were. If it turns the wrong way: switch off, wait, measure, then exchange two of them.",
    "मोटर के फेज उसी क्रम में लगाएँ जिसमें थे। उल्टा घूमे तो: बंद करें, रुकें, मापें, फिर दो फेज आपस में बदलें।",
  ],
  "fit.earth": [
    "The protective earth is connected first and taken off last.",
    "सुरक्षा अर्थ सबसे पहले जोड़ें और सबसे अंत में हटाएँ।",
  ],
  "mount.clean": [
    "Clean both faces until no old paste is left; replace an insulating pad that was squeezed once.",
    "दोनों सतहें साफ करें जब तक पुराना पेस्ट न रहे; एक बार दबा हुआ इंसुलेटिंग पैड बदलें।",
  ],
  "mount.film": [
    "A thin even film of paste, no more than fills the grooves; a dry pad takes none.",
    "पेस्ट की पतली समान परत, बस इतनी कि खाँचे भर जाएँ; सूखे पैड पर पेस्ट नहीं।",
  ],
  "mount.screws": [
    "All screws by hand first, crosswise; then the full torque, crosswise.",
    "पहले सभी पेंच हाथ से, आड़े-तिरछे क्रम में; फिर उसी क्रम में पूरा टॉर्क।",
  ],
  "mount.sheet": [
    "The part's own data sheet wins over this table. A power module, and any case that is not in it, takes the torque of its data sheet.",
    "पुर्जे की अपनी डेटा शीट इस तालिका से ऊपर है। पावर मॉड्यूल, और जो केस तालिका में नहीं है, उसके लिए उसकी डेटा शीट का टॉर्क लें।",
  ],
  "first.check": [
    "Check every plug, every screw and the earth once more; close all covers.",
    "हर प्लग, हर पेंच और अर्थ फिर जाँचें; सभी ढक्कन बंद करें।",
  ],
  "first.stand": [
    "Stand clear and switch on at the breaker or isolator.",
    "दूर खड़े होकर ब्रेकर या आइसोलेटर से चालू करें।",
  ],
  "first.watch": [
    "Watch and listen for a few minutes: it must run evenly, without smell, smoke or trip.",
    "कुछ मिनट देखें और सुनें: समान चले, गंध, धुआँ या ट्रिप न हो।",
  ],
  "first.trip": [
    "If a breaker, a residual-current breaker or a fuse opens, do not switch on again.",
    "ब्रेकर, RCD या फ्यूज खुल जाए तो दोबारा चालू न करें।",
  ],
  "back.board": [
    "The whole board as it is, with its heatsink and all that is screwed to it; no fuse changed.",
    "पूरा बोर्ड जैसा है, हीटसिंक और उस पर कसी हर चीज के साथ; कोई फ्यूज न बदलें।",
  ],
  "back.motor": [
    "The motor's readings, unplugged and proven dead: U to V, V to W, W to U, and each to earth.",
    "मोटर के माप, प्लग निकालकर और वोल्टेज शून्य जाँचकर: U-V, V-W, W-U, और हर एक अर्थ से।",
  ],
  "back.story": [
    "What it did, in order: sounds, smell, display or number of blinks, which fuse or breaker opened.",
    "क्या हुआ, क्रम से: आवाज, गंध, डिस्प्ले या झपकने की गिनती, कौन सा फ्यूज या ब्रेकर खुला।",
  ],
  "back.wiring": ["Pictures of the wiring as it was connected.", "जैसी वायरिंग जोड़ी थी उसकी तस्वीरें।"],
  "back.packed": [
    "Before packing: proven below 10 V, dry, and padded so that nothing bends.",
    "पैक करने से पहले: 10 V से कम जाँचा हुआ, सूखा, और ऐसे लपेटा कि कुछ न मुड़े।",
  ],
} as const satisfies Translated<typeof ADVICE, "hi">;
