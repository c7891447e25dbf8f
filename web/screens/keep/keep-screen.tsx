// Keep: on this device, in one file, on paper; and the way to wipe it all.
import { useState } from "preact/hooks";
import { download } from "../../engine/list-saving";
import { keepingIs } from "../../keeping/keeping-state";
import type { KeepingState } from "../../keeping/keeping-state";
import { usePage } from "../../page/page-context";
import { TickField } from "../../parts/fields";
import { ScreenHead } from "../../parts/screen-head";
import type { PageState } from "../../state/page-state";
import { LeftOut, SettleTrouble } from "./settle-trouble";

export function KeepScreen({ state }: { state: PageState }) {
  const { texts, keepsOnDevice, site } = usePage();
  return (
    <>
      <ScreenHead title={texts.keep.title}>
        <p>{texts.keep.lead}</p>
      </ScreenHead>
      <div class="inset stack">
        {keepsOnDevice === true ? (
          <OnDevice keeping={state.keeping} />
        ) : (
          <div class="sheet stack">
            <p>{texts.keep[keepsOnDevice]}</p>
            <SettleTrouble keeping={state.keeping} />
          </div>
        )}
        <InFile keeping={state.keeping} />
        {site && <site.kept />}
        <section class="sheet stack">
          <h3>{texts.keep.paper}</h3>
          <p>{texts.keep.paperWhy}</p>
        </section>
        <Wipe state={state} />
      </div>
    </>
  );
}

function OnDevice({ keeping }: { keeping: KeepingState }) {
  const { texts, keeper } = usePage();
  return (
    <section class="sheet stack">
      <h3>{texts.keep.device}</h3>
      <TickField
        label={texts.keep.deviceSwitch}
        ticked={keeping.on}
        onTick={(on) => keeper.keepOnDevice(on)}
      />
      {keeping.trouble === null && (
        <p>
          <strong>
            {!keeping.on
              ? texts.keep.deviceOff
              : keeping.written
                ? texts.keep.deviceOn
                : texts.keep.deviceBusy}
          </strong>
        </p>
      )}
      <SettleTrouble keeping={keeping} />
      <p class="soft">{texts.keep.deviceWhat}</p>
    </section>
  );
}

function InFile({ keeping }: { keeping: KeepingState }) {
  const { texts, keeper, change } = usePage();
  async function save(): Promise<void> {
    const { name, text, measured } = await keeper.fileToSave();
    download(name, text);
    change(keepingIs({ inFile: measured, said: { what: "saved", file: name } }));
  }
  return (
    <section class="sheet stack">
      <h3>{texts.keep.file}</h3>
      <p>{texts.keep.fileWhy}</p>
      <button type="button" class="button main wide" onClick={() => void save()}>
        {texts.keep.save}
      </button>
      <label class="button wide file-choice">
        <input
          type="file"
          onChange={(event) => {
            const field = event.currentTarget;
            const file = field.files?.[0];
            if (file !== undefined) void keeper.openFile(file);
            field.value = "";
          }}
        />
        {texts.keep.open}
      </label>
      <FileSaid said={keeping.said} />
    </section>
  );
}

function FileSaid({ said }: { said: KeepingState["said"] }) {
  const { texts, keeper } = usePage();
  const { faults, saved, opened, undone, stands } = texts.keep;
  return (
    <div role="status">
      {said?.what === "fault" && (
        <p class="problem at-once">
          {faults[said.fault.code]({ file: said.file, where: said.fault.where || null })} {stands}
        </p>
      )}
      {said?.what === "saved" && <p>{saved({ file: said.file })}</p>}
      {said?.what === "undone" && <p>{undone}</p>}
      {said?.what === "opened" && (
        <p>
          {opened({ file: said.file })} <LeftOut lost={said.lost} />
          <button type="button" class="plain-link" onClick={() => void keeper.undoOpening()}>
            {texts.family.undo}
          </button>
        </p>
      )}
    </div>
  );
}

/** What would be wiped, in words. */
function wiped(
  { waiting, tape, desk, keeping }: PageState,
  texts: ReturnType<typeof usePage>["texts"],
): string[] {
  const { riders, taped, lists, device } = texts.keep.wipes;
  return [
    riders({ number: waiting.length + 1 }),
    tape.kept.length > 0 ? taped({ number: tape.kept.length }) : null,
    desk.open.length > 0 ? lists({ number: desk.open.length }) : null,
    keeping.on || keeping.written ? device : null,
  ].filter((part) => part !== null);
}

function Wipe({ state }: { state: PageState }) {
  const { texts, keeper } = usePage();
  const [asked, ask] = useState(false);
  return (
    <section class="sheet stack">
      <h3>{texts.keep.wipe}</h3>
      <p>{texts.keep.wipeWhat({ what: wiped(state, texts) })}</p>
      {asked ? (
        <div class="buttons">
          <button
            type="button"
            class="button main"
            onClick={() => {
              ask(false);
              void keeper.wipe();
            }}
          >
            {texts.keep.wipeSure}
          </button>
          <button type="button" class="button" onClick={() => ask(false)}>
            {texts.keep.wipeNot}
          </button>
        </div>
      ) : (
        <button type="button" class="button wide" onClick={() => ask(true)}>
          {texts.keep.wipe}
        </button>
      )}
      <p role="status">{state.keeping.said?.what === "wiped" && texts.keep.wiped}</p>
    </section>
  );
}
