// EngineError: what the page and scripts catch when the engine itself fails. Bad input is not such a failure: it is
// answered with an `error` field.

export class EngineError extends Error {
  /**
   * @param {string} code stable name: engine_stopped
   * @param {string} message
   * @param {ErrorOptions} [options]
   */
  constructor(code, message, options) {
    super(message, options);
    this.name = "EngineError";
    this.code = code;
  }
}
