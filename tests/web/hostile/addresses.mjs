// What may be behind the # of the page's address: { what, hash }.

import { inEachPlace } from "./texts.mjs";

const said = (name) => (text) => ({ hash: `${name}=${encodeURIComponent(text.toWellFormed())}` });

const places = {
  "a list": said("list"),
  "a bike": said("bike"),
  "a host to tell its height": said("host"),
  "a setting that nobody knows": (text) => ({
    hash: `${encodeURIComponent(text.toWellFormed())}=${encodeURIComponent(text.toWellFormed())}`,
  }),
};

const lists = (stranger) => ({
  "a file of the device": "file:///etc/passwd",
  "a blob": `blob:${stranger}/00000000-0000-0000-0000-000000000000`,
  "another protocol": "ftp://127.0.0.1/bikes.json",
  "a name and a password": stranger.replace("//", "//name:password@") + "/bikes.json",
  "a stranger's list": `${stranger}/bikes.json`,
  "a stranger's list behind our name": `//127.0.0.1@${stranger.replace("http://", "")}/bikes.json`,
  "a stranger's list with back slashes": `\\\\${stranger.replace("http://", "")}\\bikes.json`,
  "a way up beyond the root": "../../../../../../../../etc/passwd",
  "percent signs that mean nothing": "%zz%%%25%",
  "an address of 50,000 letters": "/" + "a".repeat(50_000),
  "a page of the same host": "/page",
  "what the host keeps for members": "/members",
  nothing: "",
  blanks: "   ",
});

const parts = {
  "twenty thousand names": Array.from({ length: 20_000 }, (_, place) => `a${place}`).join("&"),
  "one name twenty thousand times": "a&".repeat(20_000),
  "one setting a thousand times": "view=rack&".repeat(1000),
  "a hash in a hash": "#view=rack#view=tape",
  "bytes that are no text": "bike=%ff%fe%c0%af",
  "halves of letters": "bike=%ed%a0%80",
  "plus signs and equals": "=&==&+=+&view==rack",
  "a screen that is none": "view=constructor",
  "a language that is a path": "language=../../secret",
  "a unit that every object has": "units=toString",
  "a currency in lower case with blanks": "currency=%20eur%20",
  "a currency that is none": "currency=__proto__",
};

export const hostileAddresses = (stranger) => [
  ...inEachPlace(stranger, places),
  ...Object.entries(lists(stranger)).map(([what, text]) => ({
    what: `${what} as a list`,
    ...said("list")(text),
  })),
  ...Object.entries(parts).map(([what, hash]) => ({ what, hash })),
];
