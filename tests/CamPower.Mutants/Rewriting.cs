using System.Diagnostics;
using System.IO;
using System.Linq;
using Mono.Cecil;
using Mono.Cecil.Cil;

namespace CamPower.Mutants;

/// <summary>What is changed in assemblies after they were compiled: nothing that a test could see.</summary>
internal static class Rewriting
{
    /// <summary>The field of Stryker's switch that notes which mutants were asked for.</summary>
    public const string Reached = "Reached";

    /// <summary>The field of Stryker's switch that says which mutant is on.</summary>
    public const string Active = "ActiveMutant";

    /// <summary>Lets the runtime optimize an assembly that was compiled for debugging: the tests take a fraction of the time.</summary>
    public static void Optimize(string path)
    {
        using AssemblyDefinition assembly = Read(path);
        Optimize(assembly);
        assembly.Write(path);
    }

    /// <summary>The same for the mutated library; and its switch, asked whether a mutant is on, notes that it was asked.</summary>
    public static void OptimizeAndRecord(string path)
    {
        using AssemblyDefinition assembly = Read(path);
        Optimize(assembly);
        Record(assembly.MainModule.Types.Single(t => t.Name == MutantSwitch.Type));
        assembly.Write(path);
    }

    // Read into memory, so that it can be written where it was.
    private static AssemblyDefinition Read(string path) => AssemblyDefinition.ReadAssembly(new MemoryStream(File.ReadAllBytes(path)));

    private static void Optimize(AssemblyDefinition assembly) =>
        assembly.CustomAttributes.Remove(assembly.CustomAttributes.Single(a => a.AttributeType.Name == nameof(DebuggableAttribute)));

    // if (Reached != null) Reached[id] = true; return id == ActiveMutant;
    private static void Record(TypeDefinition control)
    {
        var flags = new ArrayType(control.Module.TypeSystem.Boolean);
        var reached = new FieldDefinition(Reached, FieldAttributes.Public | FieldAttributes.Static, flags);
        control.Fields.Add(reached);
        MethodDefinition isActive = control.Methods.Single(m => m.Name == "IsActive");
        isActive.Body = new MethodBody(isActive);
        ILProcessor code = isActive.Body.GetILProcessor();
        Instruction answer = code.Create(OpCodes.Ldarg_0);
        code.Emit(OpCodes.Ldsfld, reached);
        code.Emit(OpCodes.Brfalse, answer);
        code.Emit(OpCodes.Ldsfld, reached);
        code.Emit(OpCodes.Ldarg_0);
        code.Emit(OpCodes.Ldc_I4_1);
        code.Emit(OpCodes.Stelem_I1);
        code.Append(answer);
        code.Emit(OpCodes.Ldsfld, control.Fields.Single(f => f.Name == Active));
        code.Emit(OpCodes.Ceq);
        code.Emit(OpCodes.Ret);
    }
}
