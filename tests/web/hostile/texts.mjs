// What a stranger may write where a text is expected, by what it tries. `ran` would be set by any script that runs; `stranger` is
// the address of a server that nothing may be sent to.

export const hostileTexts = (stranger) => ({
  "a script": "<script>top.ran = true</script>",
  "an image that fails": '<img src="x" onerror="top.ran = true">',
  "an image of a stranger's": `<img src="${stranger}/image">`,
  "a drawing that loads": "<svg><animate onbegin='top.ran = true' attributeName=x dur=1s></svg>",
  "a frame": `<iframe srcdoc="<script>top.ran = true</script>" src="${stranger}/frame"></iframe>`,
  "a style sheet": `</style><style>@import "${stranger}/style"; * { display: none !important }</style>`,
  "the end of an attribute": '" autofocus onfocus="top.ran = true" x="',
  "the end of a text": "'-(top.ran = true)-'\\\"`${top.ran = true}`",
  "an address that is a script": "javascript:top.ran = true",
  "an address that is a page": "data:text/html,<script>top.ran = true</script>",
  "an address of a stranger's": `${stranger}/address`,
  "an address without its protocol": stranger.replace("http:", "") + "/address",
  "a picture for a style": `red; background: url(${stranger}/picture)`,
  "figures of our own texts": "{number} {number#1 bike|{number} bikes} {where? (at {where})|}",
  "templates of others": "{{constructor.constructor('top.ran = true')()}} <%= top.ran = true %> #{1}",
  "the prototype of all objects": "__proto__",
  "what every object has": "constructor",
  "a formula": `=HYPERLINK("${stranger}/formula"; "Bikes")`,
  "letters that turn the line round": "\u202eegral oot\u202c \u2066\u2067\u2068",
  "line breaks of every kind": "one\r\ntwo\u2028three\u2029four\u0085five\u000bsix",
  "marks that cannot be printed": "\u0000\u0007\u001b[2J\u009b31m\ufeff\u00ad\u200b",
  "half of a letter": "\ud800 and \udc00",
  "2,000 letters without a break": "W".repeat(2000),
  "a letter with 1,999 accents": "e" + "\u0301".repeat(1999),
  "families of four": "\u{1F468}\u200d\u{1F469}\u200d\u{1F467}\u200d\u{1F466}".repeat(250),
});

/** A case for each text in each of `places`: `make` is given the text. */
export function inEachPlace(stranger, places) {
  return Object.entries(hostileTexts(stranger)).flatMap(([what, text]) =>
    Object.entries(places).map(([place, make]) => ({ what: `${what} as ${place}`, ...make(text) })),
  );
}
