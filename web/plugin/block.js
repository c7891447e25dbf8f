// The block as its writer sees it in the editor: which list it shows, and how. What readers see, saddlerule.php makes of it.
(({ blocks, blockEditor, components, element }) => {
  const { createElement: make } = element;
  const { Button, Placeholder, SelectControl, TextControl } = components;

  const choices = {
    language: {
      "": "The reader’s own",
      en: "English",
      de: "Deutsch",
      fr: "Français",
      es: "Español",
      nl: "Nederlands",
    },
    units: { "": "By the reader’s region", cm: "Centimetres", in: "Inches" },
    view: { "": "Your child", rack: "Bikes", tape: "Measure", list: "List" },
  };
  const labels = { language: "Language", units: "Unit", view: "First screen" };

  function Edit({ attributes, setAttributes }) {
    const set = (name) => (value) => setAttributes({ [name]: value });
    const list = make(TextControl, {
      label: "List",
      help: "An address, or the name of an upload such as bikes.csv: the newest that was uploaded under that name is shown.",
      value: attributes.list,
      onChange: set("list"),
    });
    const fromLibrary = make(
      blockEditor.MediaUploadCheck,
      null,
      make(blockEditor.MediaUpload, {
        allowedTypes: ["text/csv"],
        onSelect: ({ url }) => setAttributes({ list: url }),
        render: ({ open }) =>
          make(Button, { variant: "secondary", onClick: open }, "Choose from the media library"),
      }),
    );
    const selects = Object.entries(choices).map(([name, options]) =>
      make(SelectControl, {
        key: name,
        label: labels[name],
        value: attributes[name],
        options: Object.entries(options).map(([value, label]) => ({ value, label })),
        onChange: set(name),
      }),
    );
    const form = make("div", { style: { width: "100%" } }, list, fromLibrary, selects);
    const frame = { label: "Saddlerule", instructions: "Which bike fits a growing child." };
    return make("div", blockEditor.useBlockProps(), make(Placeholder, frame, form));
  }

  blocks.registerBlockType("saddlerule/fit", {
    apiVersion: 2,
    title: "Saddlerule",
    description: "Which bike fits a growing child.",
    category: "widgets",
    icon: "yes-alt",
    supports: { html: false },
    attributes: Object.fromEntries(
      ["list", "language", "units", "currency", "view"].map((name) => [
        name,
        { type: "string", default: "" },
      ]),
    ),
    edit: Edit,
    save: () => null,
  });
})(window.wp);
