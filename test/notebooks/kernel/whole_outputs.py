"""Settings for nbconvert that run a notebook and wait for all that its cells show.

Deno's kernel may say that it is idle before it has sent the last outputs of a cell. nbconvert stops listening there and would lose them. Its outputs keep their
order among themselves, though. So after every cell the kernel prints a mark, and all that comes before the mark belongs to the cell.
"""

from nbclient.util import ensure_async
from nbconvert.preprocessors import ExecutePreprocessor

MARK = "all outputs are out"
OUTPUTS = ("stream", "execute_result", "display_data", "error")


class WholeOutputs(ExecutePreprocessor):
    """Runs a notebook; every cell gets the outputs that come after the kernel is idle, too."""

    def __init__(self, **kw):
        super().__init__(**kw)
        self.enabled = True
        self.on_cell_executed = self.take_late_outputs

    async def take_late_outputs(self, cell, cell_index, **_):
        """Takes outputs until the mark."""
        self.kc.execute(f'console.log("{MARK}")', silent=True)
        while True:
            message = await ensure_async(self.kc.get_iopub_msg(timeout=60))
            text = message["content"].get("text", "")
            if message["msg_type"] == "stream" and MARK in text:
                return
            if message["msg_type"] in OUTPUTS:
                self.process_message(message, cell, cell_index)


c = get_config()  # noqa: F821, which nbconvert defines
c.NotebookExporter.preprocessors = [WholeOutputs]
c.WholeOutputs.record_timing = False
